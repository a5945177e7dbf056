const movesCells = /^sheet\.mutation\.(insert|remove|move|delete|reorder)/

/** Whether cells may stand elsewhere after this command. */
export function movesPlaces(commandId: string): boolean {
  return movesCells.test(commandId)
}
