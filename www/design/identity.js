// Which card on the page stands for which thing in the design. Designs are replaced, never changed in place, so a
// thing's identity is carried from the old object to the new one; a reordered card keeps its focus and its state.

/** @type {WeakMap<object, number>} */
const identities = new WeakMap();
let last = 0;

/**
 * The identity of an object of the design: the same before and after an edit of it.
 * @param {object} thing
 */
export function identityOf(thing) {
  let identity = identities.get(thing);
  if (identity === undefined) {
    identity = ++last;
    identities.set(thing, identity);
  }
  return identity;
}

/**
 * Says that `copy` stands for what `original` stood for.
 * @param {object} original
 * @param {object} copy
 */
export function carryIdentity(original, copy) {
  identities.set(copy, identityOf(original));
}

/**
 * Carries identities over to a design that came back from the engine as text: by place where lists are as long, else
 * by name, so that a thing that was put in between does not take its neighbour's.
 * @param {unknown} original
 * @param {unknown} copy
 */
export function carryIdentities(original, copy) {
  if (typeof original !== "object" || typeof copy !== "object" || !original || !copy) return;
  carryIdentity(original, copy);
  if (Array.isArray(original) !== Array.isArray(copy)) return;
  if (Array.isArray(original) && Array.isArray(copy) && original.length !== copy.length) {
    const named = new Map(original.map((item) => [item?.name, item]));
    for (const item of copy) if (typeof item?.name === "string") carryIdentities(named.get(item.name), item);
    return;
  }
  const [from, to] = [/** @type {Record<string, unknown>} */ (original), /** @type {Record<string, unknown>} */ (copy)];
  for (const key of Object.keys(to)) carryIdentities(from[key], to[key]);
}
