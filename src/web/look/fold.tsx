import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';

/** A form behind its title, made when it is first opened; on paper neither stands. */
export function Fold({ title, children }: { title: string; children: () => ComponentChildren }) {
  const [opened, setOpened] = useState(false);
  return (
    <details class="fold unprinted" onToggle={({ currentTarget }) => currentTarget.open && setOpened(true)}>
      <summary>{title}</summary>
      {opened && children()}
    </details>
  );
}
