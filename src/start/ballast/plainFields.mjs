/**
 * A webpack loader, and what plainFieldsHooks.mjs does in Node: the grid's packages are compiled so that each field of
 * each object is defined by a call, which asks first whether there is one of that name. The formula engine makes
 * hundreds of thousands of objects in a calculation, and an assignment makes the same field many times as fast.
 */
export default function plainFields(source) {
  return source.replaceAll(/\b_defineProperty\(this, "([A-Za-z_$][\w$]*)", /g, '(this.$1 = ')
}
