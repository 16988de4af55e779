import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { clockSteps, verifyChain } from './chain.ts'
import { bodyHash, envelopeHash, NO_PREVIOUS_HASH, type StoredEntry, sha256Hex } from './envelope.ts'
import { canonicalJson } from './json.ts'
import { testKitchen } from './testing/invented.ts'

const kitchen = testKitchen()
const author = kitchen.author()
const chain: StoredEntry[] = ['one', 'two', 'three', 'four'].map((name) => {
  kitchen.clock.wait(5)
  return author.write('pot-recorded', { potId: kitchen.newId(), name, volumeL: 18.9, material: 'stainless' })
})

const codes = (entries: readonly unknown[]): string[] => {
  const report = verifyChain(entries)
  return report.ok ? [] : report.faults.map(({ code, deviceSeq, detail }) => `${code} at ${deviceSeq}: ${detail}`)
}

describe('hashes', () => {
  // Published check value, FIPS 180-4 examples: SHA-256 of "abc".
  test('[J2] SHA-256 gives the published value', () => {
    expect(sha256Hex('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad')
  })

  // The sample of RFC 8785 sections 3.2.2 and 3.2.3 (from memory, not re-read): keys sorted, numbers at their shortest.
  test('[J2] canonical JSON gives the text printed in RFC 8785', () => {
    const sample = String.raw`{
      "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
      "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
      "literals": [null, true, false]
    }`
    const printed = String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`
    expect(canonicalJson(JSON.parse(sample))).toBe(printed)
  })

  test('[J2] the salt is part of the body hash, so a short answer cannot be guessed from it', () => {
    const value = { judged: 'weak' }
    expect(bodyHash({ salt: '0'.repeat(32), value })).not.toBe(bodyHash({ salt: `${'0'.repeat(31)}1`, value }))
  })
})

describe('the chain', () => {
  test('[J4] begins at 1 with sixty-four zeros and each line names the one before', () => {
    expect(chain.map(({ envelope }) => envelope.deviceSeq)).toEqual([1, 2, 3, 4])
    expect(chain[0]!.envelope.prevHash).toBe(NO_PREVIOUS_HASH)
    expect(chain.slice(1).map(({ envelope }) => envelope.prevHash)).toEqual(chain.slice(0, 3).map(({ hash }) => hash))
  })

  test('[J4] holds in any order, with chains of several devices mixed', () => {
    const other = kitchen.author().write('entry-withdrawn', { withdrawsId: kitchen.newId(), reason: 'twice' })
    const mixed = [chain[2], other, chain[0], chain[3], chain[1]]
    expect(verifyChain(mixed)).toEqual({ ok: true, checkedCount: 5, erasedCount: 0 })
  })

  test('[J5] a missing line is named by its number', () => {
    expect(codes([chain[0], chain[3]])).toEqual(['missing-before at 4: 2 to 3'])
    expect(codes(chain.slice(1))).toEqual(['missing-before at 2: 1'])
  })

  test('[J5] a line cut off at the end is seen by whoever knows how the chain ended', () => {
    const { kitchenId, deviceId } = chain[0]!.envelope
    const head = { kitchenId, deviceId, deviceSeq: 4, hash: chain[3]!.hash }
    expect(verifyChain(chain, [head]).ok).toBe(true)
    expect(verifyChain(chain.slice(0, 2), [head])).toMatchObject({
      faults: [{ code: 'missing-after', deviceSeq: 2, detail: '3 to 4' }],
    })
  })

  test('[J5] an altered envelope, an altered body and a broken link are told apart', () => {
    const [first, second] = chain as [StoredEntry, StoredEntry]
    const envelope = { ...second.envelope, visibility: 'open' as const }
    expect(codes([first, { ...second, envelope }])).toEqual(['altered-envelope at 2: hash'])
    // The forger makes the envelope's own hash right again: the next line still tells.
    const forgery = { ...second, envelope, hash: envelopeHash(envelope) }
    expect(codes([first, forgery, chain[2]])).toEqual(['broken-link at 3: 2'])
    const value = { ...(second.body!.value as object), name: 'tow' }
    expect(codes([first, { ...second, body: { ...second.body!, value } }])).toEqual(['altered-body at 2: bodyHash'])
  })

  test('[J5] two lines at one place are a fork, and what follows either is no further fault', () => {
    const envelope = { ...chain[1]!.envelope, id: kitchen.newId() }
    const rival = { ...chain[1]!, envelope, hash: envelopeHash(envelope) }
    const found = codes([...chain, rival])
    expect(found).toHaveLength(1)
    expect(found[0]).toMatch(/^fork at 2/)
  })

  test('[J6] an erased body leaves the chain whole', () => {
    const erased = chain.map((entry, i) => (i === 1 ? { ...entry, body: null } : entry))
    expect(verifyChain(erased)).toEqual({ ok: true, checkedCount: 4, erasedCount: 1 })
  })

  test('[J5] any single changed character is found', () => {
    const text = JSON.stringify(chain)
    const printable = fc.integer({ min: 32, max: 126 }).map((code) => String.fromCharCode(code))
    fc.assert(
      fc.property(fc.integer({ min: 0, max: text.length - 1 }), printable, (at, character) => {
        fc.pre(text[at] !== character)
        let changed: StoredEntry[]
        try {
          changed = JSON.parse(text.slice(0, at) + character + text.slice(at + 1))
        } catch {
          return // no longer JSON: found before it got here
        }
        expect(verifyChain(Array.isArray(changed) ? changed : [changed]).ok).toBe(false)
      }),
      { numRuns: 2000 },
    )
  })

  test('[J7] a clock that went back is asked about, by how much and at which line', () => {
    kitchen.clock.wait(-90)
    const later = author.write('entry-withdrawn', { withdrawsId: kitchen.newId(), reason: 'twice' })
    kitchen.clock.wait(90)
    expect(verifyChain([...chain, later]).ok).toBe(true)
    expect(clockSteps([later, ...chain])).toEqual([
      { entryId: later.envelope.id, deviceId: later.envelope.deviceId, backMs: 90 * 60_000 },
    ])
  })
})
