/**
 * Writing several lines that belong together, such as flour put up, how it was ground, and what it was ground from.
 * All are asked about before any is written; `<Asked record={lines} />` shows the questions.
 */
import { BodyRefused, checkBody, propose, type Refusal } from '@crib/journal'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import type { Record } from '../../records/use-record.tsx'
import type { Line } from '../../walk/taps.tsx'

export interface Lines extends Pick<Record, 'refusals' | 'keptCount' | 'sayItWasSo'> {
  /** Resolves true once every line is on this device. */
  keepAll(lines: readonly Line[]): Promise<boolean>
}

export function useLines(): Lines {
  const { facts, write } = useBook()
  const [refusals, setRefusals] = useState<readonly Refusal[]>([])
  const [keptCount, setKeptCount] = useState(0)
  const [sayItWasSo, setSayItWasSo] = useState<(() => Promise<boolean>) | null>(null)

  async function writeAll(lines: readonly Line[]): Promise<boolean> {
    try {
      for (const [kind, body] of lines) await write(kind, body as never)
    } catch (error) {
      if (!(error instanceof BodyRefused)) throw error
      setRefusals(error.refusals)
      setSayItWasSo(null)
      return false
    }
    setRefusals([])
    setSayItWasSo(null)
    setKeptCount((count) => count + 1)
    return true
  }

  async function keepAll(lines: readonly Line[]): Promise<boolean> {
    const asked = lines.flatMap(([kind, body]) => {
      const proposal = propose(facts, kind, body as never)
      return proposal.ok ? [] : proposal.refusals
    })
    if (asked.length === 0) return writeAll(lines)
    setRefusals(asked)
    const isTaken = lines.every(([kind, body]) => checkBody(kind, body).ok)
    // A function in state is called by React unless it is wrapped.
    setSayItWasSo(() => (isTaken ? () => writeAll(lines) : null))
    return false
  }

  return { refusals, keptCount, sayItWasSo, keepAll }
}
