/** The name of a cell or column, of what it belongs to and its key: `nameOf('Order', 'liners')` is OrderLiners. */
export const nameOf = (owner: string, key: string): string => `${owner}${key.charAt(0).toUpperCase()}${key.slice(1)}`
