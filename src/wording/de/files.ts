import type { Words } from '../words'

/** Why formulas keep the results that the file stores: completes "because". */
const kept = {
  otherWorkbook: 'sie eine andere Arbeitsmappe oder ein anderes Programm lesen',
  unknownFunction: 'sie eine Funktion aufrufen, die hier nicht bekannt ist',
  unknownName: 'sie einen Namen lesen, der hier nicht bekannt ist',
  acrossSheets: 'sie dieselben Zellen mehrerer Blätter lesen',
  wholeSpill: 'sie einen ganzen Überlaufbereich lesen (A1#)',
  joinedRanges: 'sie mehrere Bereiche als einen lesen, oder was ihnen gemeinsam ist',
  oldArray: 'sie eine Zelle von mehreren, oder eine Matrix, auf eine Weise nehmen, die nicht sicher zu erkennen ist',
  circle: 'sie ihr eigenes Ergebnis lesen oder was aus einem solchen folgt',
  hiddenRows: 'sie ausgeblendete Zeilen weglassen können',
  daysFrom1904: 'die Arbeitsmappe ihre Tage ab 1904 zählt',
  shownPrecision: 'die Arbeitsmappe mit den Zahlen rechnet, wie sie gezeigt werden',
  dataTable: 'nur Excel Datentabellen berechnet',
}

const view = {
  splitPanes: 'geteilte, aber nicht fixierte Fenster',
  shownFormulas: 'Formeln anstelle ihrer Ergebnisse',
  hiddenZeros: 'ausgeblendete Nullen',
  hiddenHeadings: 'ausgeblendete Zeilen- und Spaltenköpfe',
  pageView: 'die Ansicht von Seiten',
  severalViews: 'weitere Fenster und Ansichten',
}
const calculation = {
  iteration: 'wiederholtes Rechnen von Zirkeln',
  shownPrecision: 'Rechnen mit den Zahlen, wie sie angezeigt werden',
  byHand: 'Rechnen nur von Hand',
  rowsAndColumns: 'Adressen als Z1S1',
}

export const files: Words['files'] = {
  problems: {
    empty: 'Die Datei ist leer. Wählen Sie eine .xlsx-Arbeitsmappe.',
    protected:
      'Die Arbeitsmappe ist mit einem Kennwort geschützt. Öffnen Sie sie in Excel, speichern Sie eine Kopie ohne Kennwort, und wählen Sie die Kopie.',
    oldExcel:
      'Das ist eine Arbeitsmappe von Excel 2003 oder früher (.xls). Öffnen Sie sie in Excel, und speichern Sie sie als .xlsx.',
    binaryExcel: 'Das ist eine binäre Arbeitsmappe (.xlsb). Öffnen Sie sie in Excel, und speichern Sie sie als .xlsx.',
    openDocument:
      'Das ist eine OpenDocument-Tabelle (.ods). Öffnen Sie sie in dem Programm, das sie geschrieben hat, und speichern Sie sie als .xlsx.',
    notWorkbook:
      'Das ist keine Excel-Arbeitsmappe. Textdateien (.csv) müssen Sie zuerst in Excel öffnen und als .xlsx speichern.',
    damaged:
      'Die Arbeitsmappe ist beschädigt oder unvollständig und kann nicht gelesen werden. Versuchen Sie „Öffnen und Reparieren“ in Excel, und speichern Sie sie neu.',
    tooLarge:
      'Die Arbeitsmappe ist zu groß, um sie hier zu öffnen. Lassen Sie die Blätter weg, die nichts mit der Saison zu tun haben, und speichern Sie sie neu.',
  },
  kept,
  view,
  calculation,
  lost: {
    pivotTables: () => 'Pivot-Tabellen werden weggelassen.',
    charts: () => 'Diagramme werden weggelassen.',
    pictures: () => 'Bilder werden weggelassen.',
    linkedWorkbooks: () => 'Verknüpfungen mit anderen Arbeitsmappen werden nicht verfolgt.',
    keptResults: ([why, ...places]) =>
      `Formeln werden zu den Ergebnissen, die in der Datei stehen, weil ${kept[why as keyof typeof kept]}: ${places.join(', ')}.`,
    relativeNames: (names) =>
      `Namen, die ausgeblendet sind oder von der Zelle aus gelten, die sie liest, werden in Formeln ausgeschrieben: ${names.join(', ')}.`,
    macros: () => 'Makros werden weggelassen.',
    dataConnections: () => 'Datenverbindungen und Abfragen werden weggelassen.',
    slicers: () => 'Datenschnitte und Zeitachsen werden weggelassen.',
    formControls: () => 'Schaltflächen und andere Formularsteuerelemente werden weggelassen.',
    embeddedDocuments: () => 'Eingebettete Dokumente werden weggelassen.',
    conversations: () => 'Unterhaltungen in Kommentaren werden zu einfachen Notizen.',
    signature: () => 'Die digitale Signatur wird weggelassen.',
    tables: () =>
      'Tabellen werden zu einfachen Zellen, und Formeln, die sie mit Namen lesen, lesen dieselben Zellen mit ihrer Adresse.',
    shapes: () => 'Gezeichnete Formen und Textfelder werden weggelassen.',
    conditionalFormats: () => 'Bedingte Formate werden weggelassen.',
    mergedCells: () => 'Verbundene Zellen werden getrennt; ihr Text bleibt in der ersten.',
    filters: () => 'Filter werden weggelassen.',
    sheetProtection: () => 'Der Schutz von Blättern wird weggelassen.',
    pageBreaks: () => 'Von Hand gesetzte Seitenumbrüche werden weggelassen.',
    links: () => 'Links in Zellen werden zu einfachem Text.',
    sparklines: () => 'Sparklines werden weggelassen.',
    hiddenRows: () => 'Ausgeblendete Zeilen und Spalten werden gezeigt.',
    groups: () => 'Gruppierungen von Zeilen und Spalten werden weggelassen.',
    rowHeights: () => 'Von Hand gesetzte Zeilenhöhen werden weggelassen.',
    printSetUp: () =>
      'Die Druckeinrichtung wird ersetzt: Querformat, eine Seite breit, die fixierten Zeilen auf jeder Seite.',
    rowFormats: () => 'Formate ganzer Zeilen und Spalten werden weggelassen; die gefüllter Zellen bleiben.',
    printAreas: (sheets) =>
      `Druckbereiche werden weggelassen, sodass das ganze Blatt gedruckt wird: ${sheets.join(', ')}.`,
    tabColours: (sheets) => `Die Farbe der Registerkarte, eine des Designs, wird weggelassen: ${sheets.join(', ')}.`,
    view: (names) =>
      `Einstellungen der Ansicht werden weggelassen: ${names.map((name) => view[name as keyof typeof view]).join(', ')}.`,
    calculation: (names) =>
      `Einstellungen des Rechnens werden weggelassen: ${names.map((name) => calculation[name as keyof typeof calculation]).join(', ')}.`,
    workbookProtection: () => 'Der Schutz der Arbeitsmappe wird weggelassen.',
    datesFrom1904: () =>
      'Tage werden von nun an ab 1900 gezählt; eine Formel, die zu einem als Zahl geschriebenen Tag etwas zuzählt, kann um vier Jahre abweichen.',
    hiddenSheets: (sheets) => `Ausgeblendete Blätter werden gezeigt: ${sheets.join(', ')}.`,
    secondName: ([name, sheet, now]) =>
      `Der Name ${name} des Blatts ${sheet} heißt von nun an ${now}, weil ein anderer ebenso heißt.`,
    sheetNames: (names) =>
      `Namen, die auf einem Blatt gelten, gelten von nun an in der ganzen Arbeitsmappe: ${names.join(', ')}.`,
    noteFormats: () => 'Wer eine Notiz schrieb und Formate ihrer Wörter werden weggelassen; der Text bleibt.',
    properties: (names) => `Eigenschaften der Datei werden weggelassen: ${names.join(', ')}.`,
    others: (names) => `Anderes wird weggelassen, das in der Datei so heißt: ${names.join(', ')}.`,
    richText: () => 'Formate einzelner Wörter in einer Zelle werden weggelassen; der Text bleibt.',
    ownStyles: () =>
      'Farben, Schriften, Rahmen und Ausrichtung werden weggelassen, und fette Texte werden zu Überschriften; Zahlenformate bleiben.',
    otherRules: () =>
      'Regeln für das, was in eine Zelle eingegeben werden darf (Datenüberprüfung), werden weggelassen, außer sie verlangen eine Zahl oder einen Tag in Grenzen oder einen Eintrag einer Liste und sagen das in Worten.',
  },
}
