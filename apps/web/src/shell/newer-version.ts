/** The service worker: registers it, and knows whether a newer one waits. */
let waitingWorker: ServiceWorker | null = null
const listeners = new Set<() => void>()

function setWaiting(worker: ServiceWorker | null): void {
  waitingWorker = worker
  for (const listener of listeners) listener()
}

export const newerVersion = {
  subscribe: (listener: () => void) => {
    listeners.add(listener)
    return () => listeners.delete(listener)
  },
  isWaiting: () => waitingWorker !== null,
  putIn: () => {
    navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true })
    waitingWorker?.postMessage({ type: 'SKIP_WAITING' })
  },
}

/** Does nothing where there is no secure context: the book then opens only while connected, and says so. */
export async function registerServiceWorker(): Promise<void> {
  if (!('serviceWorker' in navigator) || !import.meta.env.PROD) return
  const registration = await navigator.serviceWorker.register('/sw.js')
  const look = (worker: ServiceWorker | null) => {
    worker?.addEventListener('statechange', () => {
      // The very first worker has nobody to replace.
      if (worker.state === 'installed' && navigator.serviceWorker.controller) setWaiting(worker)
    })
  }
  if (registration.waiting && navigator.serviceWorker.controller) setWaiting(registration.waiting)
  look(registration.installing)
  registration.addEventListener('updatefound', () => look(registration.installing))
}
