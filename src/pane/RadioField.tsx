import { Field, RadioGroup } from '@fluentui/react-components'
import type { ReactNode } from 'react'

interface RadioFieldProps {
  readonly label: string
  readonly hint?: string
  readonly value: string
  readonly onChoose: (value: string) => void
  /** Its radios. */
  readonly children: ReactNode
}

/** A setting that is one of a few. */
export function RadioField({ label, hint, value, onChoose, children }: RadioFieldProps) {
  return (
    <Field label={label} {...(hint !== undefined && { hint })}>
      <RadioGroup value={value} onChange={(_event, chosen) => onChoose(chosen.value)}>
        {children}
      </RadioGroup>
    </Field>
  )
}
