// German: all of its rows in one table.

/** @type {import("../language.js").Table} */
export const table = { words: {}, decimal: "," };
