import { Component, type ReactNode } from 'react'

interface SectionBoundaryProps {
  /** In place of what could not be fetched or drawn. */
  readonly otherwise: ReactNode
  readonly children: ReactNode
}

/** Keeps the fault of one section from the others. React offers this to classes alone; a new key begins anew. */
export class SectionBoundary extends Component<SectionBoundaryProps, { readonly failed: boolean }> {
  override state = { failed: false }

  static getDerivedStateFromError() {
    return { failed: true }
  }

  override render() {
    return this.state.failed ? this.props.otherwise : this.props.children
  }
}
