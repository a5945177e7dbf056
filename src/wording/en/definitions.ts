/** The texts of the definitions are English already, and so are their units. */
export const ofDefinition = (text: string): string => text
export const ofUnit = (unit: string): string => unit
