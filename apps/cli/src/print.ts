/** A document onto disk as PDF. The typesetter is loaded when something is printed: most verbs never need it. */
import { writeFile } from 'node:fs/promises'
import { GUIDANCE_EDITION } from '@crib/guidance'
import type { Facts } from '@crib/journal'
import type { PaperDocument, PaperSize, PrintSetting } from '@crib/paper'
import type { Command } from 'commander'
import { oneOf } from './card-of-book.ts'
import { type Door, printJson } from './verb.ts'

export interface PrintFlags {
  readonly paper?: string
  readonly large?: true
  readonly json?: true
}

const PAPERS = ['letter', 'a4'] as const satisfies readonly PaperSize[]

export function withPrintFlags(command: Command, { words }: Door): Command {
  return command
    .option('--paper <size>', words.say('terminal:flag-paper', { known: PAPERS.join(', ') }), 'letter')
    .option('--large', words.say('terminal:flag-large'))
}

/** Demo data is marked on every page. */
export function printSetting(
  { kitchen }: Facts,
  { paper = 'letter', large }: PrintFlags,
  { terminal }: Door,
): PrintSetting {
  return {
    paper: oneOf('--paper', paper, PAPERS),
    largePrint: large === true,
    invented: kitchen?.demo ?? false,
    edition: GUIDANCE_EDITION,
    madeAt: new Date(terminal.now()).toISOString(),
  }
}

export async function printPdf(document: PaperDocument, file: string, door: Door, { json }: PrintFlags): Promise<void> {
  const { renderPdf } = await import('@crib/paper/pdf')
  await writeFile(file, await renderPdf(document))
  if (json) printJson(door, { kind: 'printed', file, title: document.title })
  else door.terminal.out(door.words.say('terminal:printed', { title: document.title, file }))
}
