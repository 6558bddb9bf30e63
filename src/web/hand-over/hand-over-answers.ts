import type { Caution } from '../../../shared/hand-over/find-cautions.js';
import type { Masking, Recipient } from '../../../shared/hand-over/hand-over-profile.js';
import type { Unstamped } from '../../../shared/hand-over/packet.js';
import type { JsonValue } from '../../../shared/record/json-value.js';

/** What the service says about hand-overs, at the addresses beside each. */

interface Verdict {
  readonly does: 'goes' | 'masked' | 'stays';
  readonly how?: Masking;
  readonly reason: string;
  readonly by: 'profile' | 'choice' | 'override';
}

export interface FieldView extends Verdict {
  readonly section: string;
  readonly path: string;
  readonly kind: string | null;
  readonly value?: JsonValue;
}

export interface FileView extends Verdict {
  readonly id: string;
  readonly name: string | null;
  readonly type: string;
  readonly size: number;
  readonly kind: string;
  readonly regions: number;
}

export interface OtherView extends Verdict {
  readonly kind: string;
  readonly count: number;
}

/** `POST /api/incidents/:id/packet-previews` */
export interface PreviewAnswer {
  readonly asOf: string;
  readonly recipient: Recipient;
  readonly title: string;
  readonly counts: Readonly<Record<'goes' | 'masked' | 'stays', number>>;
  readonly fields: readonly FieldView[];
  readonly files: readonly FileView[];
  readonly others: readonly OtherView[];
  /** Texts to be read before they leave. */
  readonly cautions: readonly Caution[];
  readonly kinds: readonly { readonly kind: string; readonly what: string }[];
}

interface By {
  readonly person: string;
}

export interface PacketView {
  readonly id: string;
  readonly recipient: Recipient;
  readonly name: string;
  readonly purpose: string;
  readonly madeAt: string;
  readonly by: By;
  readonly head: { readonly size: number; readonly root: string };
  readonly files: number;
  readonly privileged: boolean;
  readonly stamp?: { readonly at: string; readonly authority: string };
  readonly unstamped?: Unstamped;
  readonly overrides: readonly { readonly id: string; readonly what: string; readonly reason: string }[];
  readonly deliveries: readonly {
    readonly id: string;
    readonly to: string;
    readonly way: string;
    readonly at: string;
  }[];
  readonly looks: readonly { readonly id: string; readonly at: string; readonly by: By }[];
}

/** `GET /api/incidents/:id/packets` */
export interface PacketsAnswer {
  readonly items: readonly PacketView[];
}

export interface PolicyView {
  readonly id: string;
  readonly number: string;
  readonly insurer: string;
  readonly firstDay: string;
  readonly lastDay: string;
  readonly noticePhone: string | null;
  readonly noticeMail: string | null;
  readonly noticeTerms: string | null;
  readonly craft: readonly string[];
  readonly claim: {
    readonly number?: string;
    readonly adjuster?: string;
    readonly phone?: string;
    readonly mail?: string;
  } | null;
}

export interface NoticeView {
  readonly id: string;
  readonly policy: string;
  readonly policyNumber: string;
  readonly madeAt: string;
  readonly by: By;
}

/** `GET /api/incidents/:id/first-notices` */
export interface NoticesAnswer {
  readonly reference: string;
  readonly policies: readonly PolicyView[];
  readonly uncovered: readonly string[];
  readonly notices: readonly NoticeView[];
}

/** `GET /api/incidents/:id` */
export interface IncidentAnswer {
  readonly reference: string;
}

/** `GET /api/incidents/:id/sections/people`, as far as it is asked here. */
export interface PeopleAnswer {
  readonly document: { readonly people?: readonly { readonly id: string; readonly name?: string }[] };
}
