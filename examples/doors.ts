/**
 * The doors a calculation can be asked through, each as one function from id and input to what came out of it.
 * The screens are asked in apps/web/e2e, where there is a browser.
 */
import type { Reckoning } from '@crib/catalogue'
import type { Json } from '@crib/science'

export interface Answer {
  readonly reckoning: Reckoning
  /** Everything a person would read there, as one text. */
  readonly text: string
}

export interface OpenDoor {
  readonly name: string
  ask(calc: string, input: { readonly [name: string]: Json }): Promise<Answer>
}

/** Opened anew for each caller, so that the canary can open them over a broken table. */
export async function openDoors(): Promise<readonly OpenDoor[]> {
  const { reckonById } = await import('@crib/catalogue')
  const { createWords } = await import('@crib/wording')
  const { createApp } = await import('@crib/server')
  const { runCrib } = await import('@crib/cli')
  const words = createWords()
  const app = createApp({ store: NO_STORE, hostNames: [] })

  async function crib(args: readonly string[], input: string): Promise<string> {
    const written: string[] = []
    const write = (lines: string) => void written.push(lines)
    await runCrib(args, {
      out: write,
      err: write,
      readInput: async () => input,
      env: {},
      home: '/nowhere',
      zone: 'UTC',
      now: () => 0,
      randomBytes: (count) => new Uint8Array(count),
      columns: 100,
    })
    return written.join('\n')
  }

  return [
    {
      name: 'package',
      ask: async (calc, input) => {
        const reckoning = reckonById(calc, input, words)
        return { reckoning: throughJson(reckoning), text: wordedText(reckoning) }
      },
    },
    {
      name: 'HTTP',
      ask: async (calc, input) => {
        const response = await app.request(`/api/calculations/${calc}`, {
          method: 'POST',
          headers: { 'content-type': 'application/json' },
          body: JSON.stringify(input),
        })
        const reckoning = (await response.json()) as Reckoning
        return { reckoning, text: wordedText(reckoning) }
      },
    },
    {
      name: 'terminal',
      ask: async (calc, input) => {
        const typed = JSON.stringify(input)
        return {
          reckoning: JSON.parse(await crib(['reckon', calc, '-', '--json'], typed)) as Reckoning,
          text: await crib(['reckon', calc, '-'], typed),
        }
      },
    },
  ]
}

/** No calculation opens the book; a door that tried would fail here. */
const NO_STORE = new Proxy({} as never, {
  get(_, name) {
    throw new Error(`a calculation asked the book for ${String(name)}`)
  },
})

function throughJson(reckoning: Reckoning): Reckoning {
  return JSON.parse(JSON.stringify(reckoning)) as Reckoning
}

function wordedText(reckoning: Reckoning): string {
  switch (reckoning.kind) {
    case 'reckoned': {
      const { values, reasons, warnings } = reckoning
      return [
        ...values.map(({ label, text }) => `${label}: ${text}`),
        ...reasons.map(textOf),
        ...warnings.map(textOf),
      ].join('\n')
    }
    case 'refused':
      return [...reckoning.why, ...reckoning.askWhom].map(textOf).join('\n')
    case 'bad-input':
      return reckoning.faults.map(textOf).join('\n')
    case 'unknown-calc':
      return reckoning.text
  }
}

function textOf({ text }: { readonly text: string }): string {
  return text
}
