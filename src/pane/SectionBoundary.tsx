import { Component, type ReactNode } from 'react'

interface SectionBoundaryProps {
  /** Shown in place of a section that could not be fetched or drawn; the others go on. */
  readonly otherwise: ReactNode
  readonly children: ReactNode
}

export class SectionBoundary extends Component<SectionBoundaryProps, { readonly failed: boolean }> {
  override state = { failed: false }

  static getDerivedStateFromError() {
    return { failed: true }
  }

  override render() {
    return this.state.failed ? this.props.otherwise : this.props.children
  }
}
