import {
  DOCS_NORMAL_EDITOR_UNIT_ID_KEY,
  type DocumentDataModel,
  type IDocumentBody,
  type Injector,
  IUniverInstanceService,
  UniverInstanceType,
} from '@univerjs/core'

/** What stands in the cell's editor, which is a document of its own. */
export function typedBody(injector: Injector): IDocumentBody | undefined {
  const units = injector.get(IUniverInstanceService)
  const document = units.getUnit<DocumentDataModel>(DOCS_NORMAL_EDITOR_UNIT_ID_KEY, UniverInstanceType.UNIVER_DOC)
  return document?.getSnapshot().body
}
