/**
 * Every door of the API and who may pass. The gate asks here and nowhere else; a door that is not listed is shut, and a
 * test holds this list against the routes.
 */
import type { Act } from '@crib/journal'

export interface Door {
  readonly method: 'GET' | 'POST'
  readonly path: string
  /**
   * open: before anybody has signed in. signed-in: to whoever has. kitchen: to those who may do `act` in the kitchen
   * named by `?kitchen=`. each-line: signed in, and every line brought is judged by itself (may-write.ts).
   */
  readonly to: 'open' | 'signed-in' | 'kitchen' | 'each-line'
  readonly act?: Act
}

export const DOORS: readonly Door[] = [
  { method: 'GET', path: '/api/health', to: 'open' },
  { method: 'GET', path: '/api/people/me', to: 'open' },
  { method: 'POST', path: '/api/people/join/look', to: 'open' },
  { method: 'POST', path: '/api/people/join/passkey', to: 'open' },
  { method: 'POST', path: '/api/people/join', to: 'open' },
  { method: 'POST', path: '/api/people/sign-in', to: 'open' },
  { method: 'POST', path: '/api/people/passkey/ask', to: 'open' },
  { method: 'POST', path: '/api/people/passkey/enter', to: 'open' },

  { method: 'GET', path: '/api/calculations', to: 'signed-in', act: 'reckon' },
  { method: 'POST', path: '/api/calculations/:id', to: 'signed-in', act: 'reckon' },
  { method: 'POST', path: '/api/paper', to: 'signed-in', act: 'print' },
  { method: 'GET', path: '/api/kitchens', to: 'signed-in', act: 'read' },
  { method: 'GET', path: '/api/entries', to: 'kitchen', act: 'read' },
  { method: 'POST', path: '/api/entries', to: 'each-line' },
  { method: 'GET', path: '/api/care', to: 'kitchen', act: 'care' },

  { method: 'POST', path: '/api/people/sign-out', to: 'signed-in' },
  { method: 'GET', path: '/api/people/sessions', to: 'signed-in' },
  { method: 'POST', path: '/api/people/sessions/:id/end', to: 'signed-in' },
  { method: 'POST', path: '/api/people/passkey/new', to: 'signed-in' },
  { method: 'POST', path: '/api/people/passkey/keep', to: 'signed-in' },

  { method: 'GET', path: '/api/people/members', to: 'kitchen', act: 'see-people' },
  { method: 'GET', path: '/api/people/invitations', to: 'kitchen', act: 'people' },
  { method: 'POST', path: '/api/people/invitations', to: 'kitchen', act: 'people' },
  { method: 'POST', path: '/api/people/invitations/:id/end', to: 'kitchen', act: 'people' },
  { method: 'POST', path: '/api/people/members/:id/role', to: 'kitchen', act: 'people' },
  { method: 'POST', path: '/api/people/members/:id/leave', to: 'kitchen', act: 'people' },
]

const PATTERNS = DOORS.map((door) => ({
  door,
  pattern: new RegExp(`^${door.path.replace(/:[a-z]+/g, '[^/]+')}$`),
}))

export function doorOf(method: string, path: string): Door | null {
  const asked = method === 'HEAD' ? 'GET' : method
  return PATTERNS.find(({ door, pattern }) => door.method === asked && pattern.test(path))?.door ?? null
}
