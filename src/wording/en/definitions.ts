/** The texts of the definitions are English already. */
export const ofDefinition = (text: string): string => text
