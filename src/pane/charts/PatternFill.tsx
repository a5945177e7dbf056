import { tokens } from '@fluentui/react-components'
import type { Mark } from './marks'

const size = 6

/** A fill that is known by its pattern too. The shape that takes it draws its own outline. */
export function PatternFill({ id, mark: { colour, pattern } }: { readonly id: string; readonly mark: Mark }) {
  const line = { stroke: colour, strokeWidth: 2 }
  return (
    <pattern
      id={id}
      width={size}
      height={size}
      patternUnits="userSpaceOnUse"
      patternTransform={pattern === 'slanted' ? 'rotate(45)' : undefined}
    >
      <rect
        width={size}
        height={size}
        style={{ fill: pattern === 'solid' ? colour : tokens.colorNeutralBackground1 }}
      />
      {(pattern === 'slanted' || pattern === 'crossed') && (
        <line x1={size / 2} x2={size / 2} y1={0} y2={size} style={line} />
      )}
      {(pattern === 'level' || pattern === 'crossed') && (
        <line x1={0} x2={size} y1={size / 2} y2={size / 2} style={line} />
      )}
      {pattern === 'dotted' && <circle cx={size / 2} cy={size / 2} r={size / 3.5} style={{ fill: colour }} />}
    </pattern>
  )
}
