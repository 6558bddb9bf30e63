import type { ComponentType } from 'preact';
import type { Role } from '../../../shared/kernel/role.js';

/** What a page is given: the variable parts of its address, `{ id }` at `/incidents/:id`. */
export interface PageProps {
  readonly params: Readonly<Record<string, string>>;
}

export interface PageRoute {
  readonly path: string;
  /** Fetched when the page is first opened; the module's `default` is the page. */
  readonly load: () => Promise<{ default: ComponentType<PageProps> }>;
  /** Roles that see it; `anyone` needs no sign-in, `device` opens it for an enrolled device without one. */
  readonly who: readonly (Role | 'device' | 'anyone')[];
  /** Its name in the list of pages at the top; without one it stands in none. */
  readonly nav?: string;
  /** Used all day: in the row at the top of a desk, where others stand behind a name. */
  readonly allDay?: true;
  /** Where that leads, if the path has variable parts. */
  readonly navPath?: string;
}
