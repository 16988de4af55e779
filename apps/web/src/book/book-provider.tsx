/** Opens the book on this device and hands it to every screen. */
import { type JournalStore, NO_FACTS } from '@crib/journal'
import { openIdbStore } from '@crib/journal/idb'
import { type ReactNode, useCallback, useEffect, useMemo, useRef, useState } from 'react'
import { type Book, BookContext } from './book.tsx'
import { type ClockQuestion, clockSinceLastTime, createClockWatch } from './clock-watch.ts'
import { writeDemoKitchen } from './demo-kitchen.ts'
import { type Device, openDevice } from './device.ts'
import { HTTP_SERVER } from './exchange.ts'
import { type Keeper, type KeeperState, newId, oneTabOnly, openKeeper } from './keeper.ts'

interface Desk {
  readonly store: JournalStore
  readonly device: Device
  readonly deviceId: string
  readonly personId: string
  readonly demoKitchenId: string | null
}

const EXCHANGE_EVERY_MS = 20_000
const CLOCK_LOOK_EVERY_MS = 5000

async function openDesk(): Promise<Desk> {
  const [store, device] = await Promise.all([openIdbStore('kettle-and-crib-book'), openDevice()])
  // Two tabs opened at once must not make this device two.
  return oneTabOnly('kettle-and-crib-device', async () => {
    const deviceId = (await device.get('deviceId')) ?? newId()
    const personId = (await device.get('personId')) ?? newId()
    await device.set('deviceId', deviceId)
    await device.set('personId', personId)
    if (asksForDemo()) await device.set('kitchenId', await demoKitchenOf(store, device))
    const demoKitchenId = (await device.get('demoKitchenId')) ?? null
    return { store, device, deviceId, personId, demoKitchenId }
  })
}

/** The address the server prints for a first look: `/?look=demo`. */
function asksForDemo(): boolean {
  const address = new URL(location.href)
  if (address.searchParams.get('look') !== 'demo') return false
  address.searchParams.delete('look')
  history.replaceState(null, '', address)
  return true
}

/** The invented kitchen of this device, written the first time it is asked for. */
async function demoKitchenOf(store: JournalStore, device: Device): Promise<string> {
  const known = await device.get('demoKitchenId')
  if (known) return known
  const written = await writeDemoKitchen(store)
  await device.set('demoKitchenId', written)
  return written
}

export function BookProvider({ children }: { readonly children: ReactNode }) {
  const [desk, setDesk] = useState<Desk | null>(null)
  const [failure, setFailure] = useState<unknown>(null)
  /** Undefined while it is not known which kitchen was open last. */
  const [kitchenId, setKitchenId] = useState<string | null | undefined>(undefined)
  const [state, setState] = useState<KeeperState | null>(null)
  const keeper = useRef<Keeper | null>(null)
  const [clockQuestion, setClockQuestion] = useState<ClockQuestion | null>(null)

  useEffect(() => {
    let stale = false
    openDesk().then(async (opened) => {
      const lastWallMs = await opened.device.get('lastWallMs')
      const lastKitchenId = (await opened.device.get('kitchenId')) ?? null
      if (stale) return
      setClockQuestion(clockSinceLastTime(Date.now(), lastWallMs))
      setDesk(opened)
      setKitchenId(lastKitchenId)
    }, setFailure)
    return () => {
      stale = true
    }
  }, [])

  useClockWatch(desk, setClockQuestion)

  useEffect(() => {
    if (!desk || !kitchenId) return
    let closed = false
    let timer: ReturnType<typeof setTimeout>
    const exchangeOften = async () => {
      clearTimeout(timer)
      await keeper.current?.exchangeNow()
      if (!closed) timer = setTimeout(exchangeOften, EXCHANGE_EVERY_MS)
    }
    const staysHere = kitchenId === desk.demoKitchenId
    openKeeper({
      ...desk,
      staysHere,
      server: HTTP_SERVER,
      kitchenId,
      changed: (next) => !closed && setState(next),
    }).then((opened) => {
      if (closed) return opened.close()
      keeper.current = opened
      void exchangeOften()
    }, setFailure)
    const soon = () => void exchangeOften()
    window.addEventListener('online', soon)
    return () => {
      closed = true
      clearTimeout(timer)
      window.removeEventListener('online', soon)
      keeper.current?.close()
      keeper.current = null
      setState(null)
    }
  }, [desk, kitchenId])

  const choose = useCallback(
    async (chosen: string | null) => {
      await desk?.device.set('kitchenId', chosen)
      setKitchenId(chosen)
    },
    [desk],
  )
  const write = useCallback<Book['write']>(async (kind, body, options) => {
    if (!keeper.current) throw new Error('no book is open')
    const entry = await keeper.current.write(kind, body, options)
    void keeper.current.exchangeNow()
    return entry
  }, [])
  const doors = useMemo(
    () => ({
      write,
      newId,
      answerClockQuestion: () => setClockQuestion(null),
      openOwnKitchen: async (name: string) => {
        if (!desk) return
        const fresh = newId()
        const opened = await openKeeper({
          ...desk,
          staysHere: false,
          server: HTTP_SERVER,
          kitchenId: fresh,
          changed: () => undefined,
        })
        await opened.write('kitchen-opened', { kitchenId: fresh, name, demo: false })
        opened.close()
        await choose(fresh)
      },
      openDemoKitchen: async () => {
        if (!desk) return
        const demoKitchenId = await demoKitchenOf(desk.store, desk.device)
        setDesk({ ...desk, demoKitchenId })
        await choose(demoKitchenId)
      },
      joinKitchen: choose,
      closeKitchen: () => choose(null),
      goOnAs: async (personId: string, chosen: string | null) => {
        await desk?.device.set('personId', personId)
        if (chosen !== null) await desk?.device.set('kitchenId', chosen)
        location.replace('/')
      },
      kitchensOnServer: async () => HTTP_SERVER.kitchens(desk?.deviceId ?? ''),
    }),
    [desk, choose, write],
  )
  const book = useMemo<Book>(
    () => ({
      ...doors,
      ready: desk !== null && kitchenId !== undefined && (kitchenId === null || state?.isAwaited === false),
      failure,
      kitchenId: kitchenId ?? null,
      facts: state?.facts ?? NO_FACTS,
      pendingCount: state?.pendingCount ?? 0,
      online: state?.online ?? true,
      staysHere: desk !== null && kitchenId === desk.demoKitchenId,
      secure: window.isSecureContext,
      role: state?.standing.role,
      asksToSignIn: state?.asksToSignIn ?? false,
      clockQuestion,
    }),
    [doors, desk, failure, kitchenId, state, clockQuestion],
  )
  return <BookContext value={book}>{children}</BookContext>
}

function useClockWatch(desk: Desk | null, ask: (question: ClockQuestion) => void): void {
  useEffect(() => {
    if (!desk) return
    const watch = createClockWatch({ wall: () => Date.now(), mono: () => performance.now() })
    const look = () => {
      if (document.hidden) return
      const question = watch.look()
      if (question) ask(question)
      void desk.device.set('lastWallMs', Date.now())
    }
    const timer = setInterval(look, CLOCK_LOOK_EVERY_MS)
    document.addEventListener('visibilitychange', watch.begin)
    return () => {
      clearInterval(timer)
      document.removeEventListener('visibilitychange', watch.begin)
    }
  }, [desk, ask])
}
