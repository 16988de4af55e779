/** The HTTP door: parses, calls a package, shows. No formula and no state lives here; the store is handed in. */
import type { JournalStore } from '@crib/journal'
import { CODE_VERSION } from '@crib/science'
import { createWords } from '@crib/wording'
import { Hono } from 'hono'
import { bodyLimit } from 'hono/body-limit'
import { compress } from 'hono/compress'
import { HTTPException } from 'hono/http-exception'
import { secureHeaders } from 'hono/secure-headers'
import { calcRoutes } from './calc-routes.ts'
import { type CareParts, careRoutes } from './care-routes.ts'
import { journalRoutes } from './journal-routes.ts'
import { onlyOurHost } from './only-our-host.ts'
import { paperRoutes } from './paper-routes.ts'
import { type GateEnv, gate } from './people/gate.ts'
import type { People } from './people/people.ts'
import { peopleRoutes } from './people/people-routes.ts'
import { webRoutes } from './web-routes.ts'

export interface AppParts {
  readonly store: JournalStore
  /** Who belongs where, and whether anybody signs in; absent in tests that need nobody. */
  readonly people?: People
  /** How the book is kept; absent in tests that need none. */
  readonly care?: CareParts
  /** Folder of the built screens; absent in tests that need none. */
  readonly webDist?: string
  /** Host names this server answers to; a foreign name in the Host header is refused (DNS rebinding). Empty: any. */
  readonly hostNames: readonly string[]
}

const BODY_LIMIT_BYTES = 8 * 1024 * 1024

export function createApp({ store, people, care, webDist, hostNames }: AppParts): Hono<GateEnv> {
  const words = createWords()
  const app = new Hono<GateEnv>()

  app.use(onlyOurHost(hostNames))
  app.use(
    secureHeaders({
      contentSecurityPolicy: {
        defaultSrc: ["'self'"],
        // The heat kernel is compiled from bytes in the page's own script; no text is ever run as script.
        scriptSrc: ["'self'", "'wasm-unsafe-eval'"],
        // Inline style attributes carry measured widths of drawings.
        styleSrc: ["'self'", "'unsafe-inline'"],
        imgSrc: ["'self'", 'data:', 'blob:'],
        objectSrc: ["'none'"],
        frameAncestors: ["'none'"],
      },
      // Set by whoever puts TLS in front; plain loopback must not claim it.
      strictTransportSecurity: false,
    }),
  )
  app.use(compress())
  app.use('/api/*', bodyLimit({ maxSize: BODY_LIMIT_BYTES }))
  app.use('/api/*', gate(people))

  app.get('/api/health', (c) => c.json({ ok: true, codeVersion: CODE_VERSION }))
  app.route('/api/calculations', calcRoutes())
  app.route('/api', journalRoutes(store, people))
  if (people) app.route('/api/people', peopleRoutes(people))
  if (care) app.route('/api/care', careRoutes(care))
  app.route('/api/paper', paperRoutes())
  app.all('/api/*', (c) => c.json({ error: words.say('common:no-such-address', { path: c.req.path }) }, 404))
  if (webDist) app.route('/', webRoutes(webDist))

  // The one place where errors become statuses.
  app.onError((error, c) => {
    if (error instanceof HTTPException) return c.json({ error: error.message }, error.status)
    console.error(error)
    return c.json({ error: words.say('common:unexpected') }, 500)
  })
  return app
}
