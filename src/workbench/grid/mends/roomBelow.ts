/**
 * How many empty rows follow what is filled. The grid's engine gives #REF! for a SEQUENCE that would reach below the
 * last row, even within a formula, and BREAKEVEN tries 200 rounds where nothing is said. Seen with univer 0.25.1.
 */
export const roomBelow = 1000
