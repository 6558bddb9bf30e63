import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { useTarget } from './target.js';

interface LazyFoldProps {
  readonly title: ComponentChildren;
  /** Opens by itself when one of these, or what is below, is looked for. */
  readonly paths: readonly string[];
  readonly startsOpen?: boolean;
  readonly name?: string;
  readonly children: () => ComponentChildren;
}

/** Questions behind their title, made when it is first opened: a record has some four hundred. */
export function LazyFold({ title, paths, startsOpen = false, name = 'part-fold', children }: LazyFoldProps) {
  const { target } = useTarget();
  const isSought = target !== null && paths.some((path) => target === path || target.startsWith(`${path}/`));
  const [open, setOpen] = useState(startsOpen || isSought);
  const [made, setMade] = useState(open);
  useEffect(() => {
    if (isSought) {
      setOpen(true);
      setMade(true);
    }
  }, [isSought, target]);
  return (
    <details
      class={name}
      open={open}
      onToggle={({ currentTarget }) => {
        setOpen(currentTarget.open);
        if (currentTarget.open) setMade(true);
      }}
    >
      <summary>{title}</summary>
      {made && children()}
    </details>
  );
}
