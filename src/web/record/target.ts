import { createContext } from 'preact';
import { useContext } from 'preact/hooks';

/** The field that somebody was led to, from a list of what the report lacks or from a fault. */
export interface Target {
  readonly target: string | null;
}

const Sought = createContext<Target>({ target: null });

export const TargetProvider = Sought.Provider;
export const useTarget = (): Target => useContext(Sought);

/** Puts the focus into a field, or into the nearest thing above it that is there. */
export function focusField(path: string): void {
  for (let at = path; at !== ''; at = at.slice(0, at.lastIndexOf('/'))) {
    const field = document.querySelector<HTMLElement>(`[data-path="${CSS.escape(at)}"]`);
    const control = field?.querySelector<HTMLElement>('input, select, textarea, button, summary');
    if (control === undefined || control === null) continue;
    control.focus({ preventScroll: true });
    field?.scrollIntoView({ block: 'center' });
    return;
  }
}
