/** Light, dark or high contrast by hand, else as the device asks. Remembered on this device only, before any book is open. */
export type Theme = 'device' | 'light' | 'dark' | 'contrast'

const KEY = 'theme'
const THEMES: readonly Theme[] = ['device', 'light', 'dark', 'contrast']

export function rememberedTheme(): Theme {
  try {
    const kept = localStorage.getItem(KEY)
    return THEMES.find((theme) => theme === kept) ?? 'device'
  } catch {
    return 'device' // storage refused: the device's own choice stands
  }
}

export function showTheme(theme: Theme): void {
  if (theme === 'device') document.documentElement.removeAttribute('data-theme')
  else document.documentElement.dataset.theme = theme
}

export function rememberTheme(theme: Theme): void {
  showTheme(theme)
  try {
    localStorage.setItem(KEY, theme)
  } catch {
    // it holds until the page is closed
  }
}
