import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { useLocation } from 'wouter-preact';

/**
 * What stands behind its name at the top. It closes when a page was chosen, with Escape, and when somebody goes on
 * elsewhere, so that it never lies over what is being read.
 */
export function Menu({ name, kind, children }: { name: string; kind: string; children: ComponentChildren }) {
  const [path] = useLocation();
  const own = useRef<HTMLDetailsElement>(null);
  const close = (): void => {
    if (own.current !== null) own.current.open = false;
  };
  useEffect(close, [path]);
  useEffect(() => {
    const leave = ({ target }: Event): void => {
      if (target instanceof Node && own.current?.contains(target) === false) close();
    };
    document.addEventListener('pointerdown', leave);
    document.addEventListener('focusin', leave);
    return () => {
      document.removeEventListener('pointerdown', leave);
      document.removeEventListener('focusin', leave);
    };
  }, []);
  return (
    <details
      class={kind}
      ref={own}
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || own.current?.open !== true) return;
        close();
        own.current.querySelector('summary')?.focus();
      }}
    >
      <summary>{name}</summary>
      {children}
    </details>
  );
}
