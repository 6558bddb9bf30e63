import type { ComponentChildren } from 'preact';
import { Link } from 'wouter-preact';

interface DayLineProps {
  /** Where it is handled. */
  readonly href: string;
  /** What is left or how many, set large; a word where it is no figure. */
  readonly figure?: ComponentChildren;
  readonly title: ComponentChildren;
  readonly about?: ComponentChildren;
}

/** One line of the day: pressed anywhere it leads to where it is handled. */
export function DayLine({ href, figure, title, about }: DayLineProps) {
  return (
    <li>
      <Link href={href} class="day-line">
        {figure !== undefined && <strong class="day-figure">{figure}</strong>}
        <span class="day-what">
          <span class="day-title">{title}</span>
          {about !== undefined && <span class="quiet">{about}</span>}
        </span>
      </Link>
    </li>
  );
}
