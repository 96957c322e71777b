/** What a line of an explanation is to the line above it. */
export const arabicExplained = {
  roles: {
    for: "حجة له",
    from: "من",
    used: "محسوب على",
    against: "عليه",
    answered: "اعتراض لا يصمد",
    member: null,
    settler: null,
    lack: null,
  },
  all: "أيّها هي",
};
