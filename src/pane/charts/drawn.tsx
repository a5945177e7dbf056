import type { ReactNode } from 'react'
import { functionIn } from '../../derived/definitionIn'
import type { NoChart } from '../../workbook/compare/evaluated'
import { usePaneStyles } from '../usePaneStyles'
import { useProblemSentence } from '../useProblemSentence'
import { useWords } from '../useWords'

/** The chart of what was found, or why there is none. */
export function drawn<Data extends object>(data: Data | NoChart, draw: (data: Data) => ReactNode): ReactNode {
  return 'noChart' in data ? <NoChartText noChart={data.noChart} /> : draw(data as Data)
}

function NoChartText({ noChart }: NoChart) {
  const pane = usePaneStyles()
  const words = useWords()
  const { compare: say, frame } = words
  const problemSentence = useProblemSentence()
  const why = () => {
    switch (noChart.kind) {
      case 'cellError':
        return frame.inputShows(noChart.code)
      case 'problems':
        return noChart.problems
          .map((problem) => problemSentence(problem, functionIn(noChart.definition, words)))
          .join(' ')
      case 'oneRoundOnly':
        return say.oneRoundOnly
    }
  }
  return <p className={pane.line}>{say.noChart(why())}</p>
}
