/** What values inherit from: nothing. Made from it, and not from null, they take a fraction of the room. */
export const bare: object = Object.freeze(Object.create(null) as object);
