import type { Words } from '../words'

const says = (detail: string) => (detail === '' ? '' : ` (sie meldet „${detail.trim().replace(/\.$/, '')}“)`)

export const port: Words['port'] = {
  cellEditMode: () => 'Drücken Sie in der Zelle zuerst Enter oder Esc, dann noch einmal versuchen.',
  protectedSheet: () =>
    'Dieses Blatt ist geschützt: heben Sie den Schutz auf oder wählen Sie eine Zelle auf einem anderen Blatt, dann noch einmal versuchen.',
  protectedWorkbook: () =>
    'Der Aufbau dieser Arbeitsmappe ist geschützt, deshalb nimmt sie keine neuen Blätter auf: heben Sie den Schutz unter „Überprüfen“ auf, oder öffnen Sie eine andere Arbeitsmappe.',
  nameTaken: (detail) =>
    `In der Arbeitsmappe gibt es schon ${detail}, und nichts von Ihnen wird überschrieben: benennen Sie es um, löschen Sie es, oder öffnen Sie eine leere Arbeitsmappe.`,
  bookRefused: (detail) =>
    `Die Arbeitsmappe hat die Blätter nicht angenommen${says(detail)} und ist, wie sie war: noch einmal versuchen, oder eine leere Arbeitsmappe öffnen.`,
  partLeft: (detail) =>
    `Die Arbeitsmappe hat nur einen Teil angenommen und nicht wieder hergegeben: löschen Sie ${detail}, dann noch einmal versuchen.`,
  cellChanged: (detail) =>
    `In ${detail} steht inzwischen etwas anderes, deshalb wurde nichts geändert: sehen Sie nach, dann noch einmal versuchen.`,
  partChanged: (detail) =>
    `Die Arbeitsmappe hat nur einen Teil geändert und nicht zurückgeändert: sehen Sie in ${detail} nach und machen Sie dort rückgängig (Strg+Z), was nicht ist, wie es war.`,
  columnFilled: (detail) =>
    `Excel hat die Spalte ${detail} einer Tabelle mit einer einzigen Formel gefüllt, deshalb ist alles wieder, wie es war: wählen Sie Werte, oder schalten Sie in den AutoKorrektur-Optionen von Excel „Formeln in Tabellen ausfüllen, um berechnete Spalten zu erstellen“ aus.`,
  noSelection: () => 'Wählen Sie zuerst eine Zelle im Blatt, dann noch einmal versuchen.',
  hostFailed: (detail) =>
    `Die Arbeitsmappe hat es nicht angenommen${says(detail)}: nichts wurde geändert. Noch einmal versuchen, oder an anderer Stelle.`,
  notRead: (detail) => `Die Arbeitsmappe ließ sich nicht lesen${says(detail)}: noch einmal versuchen.`,
}
