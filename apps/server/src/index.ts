export { type AppParts, createApp } from './app.ts'
export { type RunningServer, type ServerOptions, startServer } from './start-server.ts'
