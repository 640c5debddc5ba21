import { effect, signal } from '@preact/signals';

/** How the page looks on this machine; nothing of it belongs to a yard. */
export interface Settings {
  /** `auto` follows the system; `bright` is for a screen in full sun. */
  readonly theme: 'auto' | 'light' | 'dark' | 'bright';
  readonly text: 'normal' | 'bigger';
  readonly clock: '24' | '12';
}

const KEY = 'shadewright.settings';
const DEFAULT: Settings = { theme: 'auto', text: 'normal', clock: '24' };
const ALLOWED: { readonly [K in keyof Settings]: readonly Settings[K][] } = {
  theme: ['auto', 'light', 'dark', 'bright'],
  text: ['normal', 'bigger'],
  clock: ['24', '12'],
};

export const settings = signal<Settings>(stored());

/** The theme on the page now, the system's choice resolved. */
export const wornTheme = signal<'light' | 'dark' | 'bright'>('light');

export function changeSettings(change: Partial<Settings>): void {
  settings.value = { ...settings.value, ...change };
  try {
    localStorage.setItem(KEY, JSON.stringify(settings.value));
  } catch {
    // A browser that keeps nothing: the choice holds until the page closes.
  }
}

/** Puts the chosen look on the page, now and at every change of the choice or of the system's own. */
export function wearSettings(): void {
  const systemIsDark = matchMedia('(prefers-color-scheme: dark)');
  const wear = (): void => {
    const { theme, text } = settings.value;
    const root = document.documentElement;
    wornTheme.value = theme === 'auto' ? (systemIsDark.matches ? 'dark' : 'light') : theme;
    root.dataset.theme = wornTheme.value;
    root.dataset.text = text;
  };
  systemIsDark.addEventListener('change', wear);
  effect(wear);
}

function stored(): Settings {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? '{}');
    const one = <K extends keyof Settings>(key: K): Settings[K] => {
      const value = (kept as Partial<Settings>)[key];
      return value !== undefined && ALLOWED[key].includes(value) ? value : DEFAULT[key];
    };
    return { theme: one('theme'), text: one('text'), clock: one('clock') };
  } catch {
    return DEFAULT;
  }
}
