export default {
  id: "longest-side",
  version: "1",
  title: "Longest side",
  doc: "The longest of some lengths.",
  inputs: [{ name: "values", kind: "measurements", doc: "the lengths" }],
  numbers: [{ name: "longest", kind: "input", doc: "the longest" }],
  compute({ values }) {
    const value = Math.max(...values.map((one) => one.quantity.value));
    return { numbers: { longest: { value, low: null, high: null } } };
  },
  sentence: ({ numbers }) => `The longest is ${numbers.longest.value} m.`,
};
