/**
 * Gives #VALUE! where the grid's engine fails on a formula. It threw, and nothing was calculated any more: a cell with
 * =SWITCH(), =DROP("",0) or =LAMBDA(H1:H3,"x") kept all others of the workbook at their old results for good, and
 * recalc ended with a trace. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import {
  AstTreeBuilder,
  ErrorType,
  ErrorValueObject,
  IFormulaDependencyGenerator,
  IFormulaRuntimeService,
  Interpreter,
  Lexer,
  type LexerNode,
} from '@univerjs/engine-formula'

/** The private parts of the engine that are repaired here. */
interface Generator {
  _getRangeListByNode(located: object): Promise<readonly unknown[]>
}

export function catchFaults(injector: Injector): void {
  const failed = () => ErrorValueObject.create(ErrorType.VALUE)

  const lexer = injector.get(Lexer)
  const read = lexer.treeBuilder.bind(lexer)
  // In the place of a tree the engine takes the text of an error.
  lexer.treeBuilder = (formula) =>
    attempt(
      () => read(formula),
      () => ErrorType.VALUE as never,
    )

  const builder = injector.get(AstTreeBuilder)
  const parse = builder.parse.bind(builder)
  builder.parse = (tree) =>
    attempt(
      () => parse(tree),
      () => parse(read(`=${ErrorType.VALUE}`) as LexerNode),
    )

  const interpreter = injector.get(Interpreter)
  const execute = interpreter.execute.bind(interpreter)
  interpreter.execute = (node) => attempt(() => execute(node), failed)
  const executeAhead = interpreter.executePreCalculateNode.bind(interpreter)
  interpreter.executePreCalculateNode = (node) => attempt(() => executeAhead(node), failed as never)
  const executeAsync = interpreter.executeAsync.bind(interpreter)
  interpreter.executeAsync = (node) => executeAsync(node).catch(failed)

  const runtime = injector.get(IFormulaRuntimeService)
  const setResult = runtime.setRuntimeData.bind(runtime)
  runtime.setRuntimeData = (result) =>
    attempt(
      () => setResult(result),
      () => setResult(failed()),
    )

  const generator = injector.get(IFormulaDependencyGenerator) as unknown as Generator
  const readCells = generator._getRangeListByNode.bind(generator)
  generator._getRangeListByNode = (located) => readCells(located).catch(() => [])
}

function attempt<Result>(act: () => Result, failed: () => Result): Result {
  try {
    return act()
  } catch {
    return failed()
  }
}
