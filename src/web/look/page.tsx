import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { common } from '../words/common.js';

interface PageProps {
  readonly title: string;
  /** Under the heading: what the page is about, as of when. */
  readonly lead?: ComponentChildren;
  /** Beside the heading at a desk, such as the earliest deadline. */
  readonly figure?: ComponentChildren;
  /** In thumb's reach on a phone, after the content at a desk. */
  readonly actions?: ComponentChildren;
  /** Above everything, over the whole width. */
  readonly strip?: ComponentChildren;
  readonly children: ComponentChildren;
}

/** Whether a page was shown before: the first one leaves the focus where the browser puts it. */
let shownBefore = false;

/** The frame of every page: heading, content, and the bar of actions. */
export function Page({ title, lead, figure, actions, strip, children }: PageProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    // A screen reader learns that the page changed; without this it would stay at a link that is gone.
    if (shownBefore) heading.current?.focus({ preventScroll: true });
    shownBefore = true;
  }, []);
  useEffect(() => {
    document.title = `${title} · ${common.deskName}`;
  }, [title]);
  return (
    <>
      {strip}
      <main class={actions === undefined ? 'page' : 'page has-actions'} id="page">
        <div class="page-head">
          <div>
            <h1 ref={heading} tabIndex={-1}>
              {title}
            </h1>
            {lead !== undefined && <div class="lead">{lead}</div>}
          </div>
          {figure}
        </div>
        {children}
        {actions !== undefined && <div class="actions">{actions}</div>}
      </main>
    </>
  );
}
