import { describe, expect, it } from 'vitest'
import { portSentence } from '../../src/pane/portSentence'
import { port } from '../../src/wording/en/port'
import { PortProblem } from '../../src/workbook/port'

describe('the sentence for what a workbook could not do', () => {
  it.each([
    [new PortProblem('cellEditMode'), 'Press Enter or Esc in the cell first, then try again.'],
    [
      new PortProblem('protectedSheet'),
      'This sheet is protected: unprotect it or select a cell on another sheet, then try again.',
    ],
    [new PortProblem('noSelection'), 'Select a cell in the sheet first, then try again.'],
    [
      new PortProblem('protectedWorkbook'),
      'The structure of this workbook is protected, so it takes no new sheets: unprotect it on the Review tab, or open another workbook.',
    ],
    [
      new PortProblem('nameTaken', 'the sheet Orders'),
      'The workbook already holds the sheet Orders, and nothing of yours is overwritten: rename or delete that first, or open an empty workbook.',
    ],
    [
      new PortProblem('bookRefused', 'Too much.'),
      'The workbook did not take the sheets (it says “Too much”) and is as it was: try again, or open an empty workbook.',
    ],
    [
      new PortProblem('partLeft', 'the sheet Orders'),
      'Only part was written and could not be undone: delete the sheet Orders, then try again.',
    ],
    [
      new PortProblem('cellChanged', 'B4'),
      'B4 holds something else by now, so nothing was changed: look at it, then try again.',
    ],
    [
      new PortProblem('partChanged', 'B4:B9 on Orders'),
      'The workbook changed only a part and did not change it back: look at B4:B9 on Orders, and undo there (Ctrl+Z) what is not as it was.',
    ],
    [new PortProblem('hostFailed'), 'The workbook did not take it: nothing was changed. Try again, or somewhere else.'],
    [
      new PortProblem('hostFailed', 'Out of memory.'),
      'The workbook did not take it (it says “Out of memory”): nothing was changed. Try again, or somewhere else.',
    ],
    [
      new Error('lost'),
      'The workbook did not take it (it says “lost”): nothing was changed. Try again, or somewhere else.',
    ],
    ['odd', 'The workbook did not take it (it says “odd”): nothing was changed. Try again, or somewhere else.'],
  ])('says what to do about %s', (error, sentence) => {
    expect(portSentence(error, 'writing', port)).toBe(sentence)
  })

  it('speaks of reading where nothing was to be written', () => {
    expect(portSentence(new Error('Out of memory.'), 'reading', port)).toBe(
      'The workbook could not be read (it says “Out of memory”): try again.',
    )
    expect(portSentence(new PortProblem('hostFailed'), 'reading', port)).toBe(
      'The workbook could not be read: try again.',
    )
    expect(portSentence(new PortProblem('cellEditMode'), 'reading', port)).toBe(
      'Press Enter or Esc in the cell first, then try again.',
    )
  })
})
