/** Catches what a screen throws, so that one broken sheet does not close the book. */
import { Component, type ReactNode } from 'react'
import { ErrorState } from '../parts-of-the-sheet/standstill.tsx'

export class ErrorFence extends Component<{ readonly children: ReactNode }, { readonly error: unknown }> {
  override state: { readonly error: unknown } = { error: null }

  static getDerivedStateFromError(error: unknown) {
    return { error }
  }

  override componentDidCatch(error: unknown) {
    console.error(error)
  }

  override render() {
    if (this.state.error === null) return this.props.children
    return <ErrorState error={this.state.error} onRetry={() => this.setState({ error: null })} />
  }
}
