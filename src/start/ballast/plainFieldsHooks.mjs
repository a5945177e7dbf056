/** For Node, which loads the grid's packages as they are: changes them while they load, as webpack does for pages. */
import plainFields from './plainFields.mjs'

const ofGrid = /@univerjs\/[^/]+\/lib\/es\/.*\.js$/

export async function load(url, context, next) {
  const loaded = await next(url, context)
  return ofGrid.test(url) && loaded.source ? { ...loaded, source: plainFields(String(loaded.source)) } : loaded
}
