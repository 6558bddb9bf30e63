/** What goes from one shift to the next; ids and references, no names of guests and no medical details. */
export interface ShiftSummary {
  /** RFC 3339. */
  readonly asOf: string;
  readonly openCalls: readonly OpenCall[];
  readonly craftHeld: readonly CraftHeld[];
  /** Absent from hand-overs that were signed before craft that are not back were listed. */
  readonly notBack?: readonly NotBackCraft[];
  readonly callBacks: readonly ShiftTask[];
  /** Tasks that are overdue or due within the next shift. */
  readonly dueNext: readonly ShiftTask[];
}

export interface OpenCall {
  readonly incidentId: string;
  readonly reference: string;
  readonly openedAt: string;
}

export interface CraftHeld {
  readonly craftId: string;
  readonly name: string;
  /** Where it usually leaves from; null where nobody said. Hand-overs signed before stations were listed lack it. */
  readonly station?: string | null;
  readonly why: readonly string[];
}

/** A craft that is looked for, or one of which nobody has said yet whether it is an incident. */
export interface NotBackCraft {
  readonly notBackId: string;
  readonly unit: string;
  /** RFC 3339. */
  readonly since: string;
  /** How it ended; null while it is looked for. */
  readonly ended: string | null;
}

export interface ShiftTask {
  readonly taskId: string;
  readonly reference: string;
  readonly title: string;
  readonly dueAt: string | null;
  /** A promise to or by somebody outside. */
  readonly isPromise: boolean;
}

const NEXT_SHIFT_HOURS = 12;

/**
 * What the incoming shift has to know, the oldest call and the soonest task first. A task whose time nobody knows is
 * among those that are due.
 * @param now epoch milliseconds
 * @example summarizeShift({ calls: [], craft: [], notBack: [], tasks: [] }, Date.UTC(2026, 6, 4)).openCalls // []
 */
export function summarizeShift(
  {
    calls,
    craft,
    notBack,
    tasks,
  }: {
    readonly calls: readonly OpenCall[];
    readonly craft: readonly CraftHeld[];
    readonly notBack: readonly NotBackCraft[];
    /** Open tasks only. */
    readonly tasks: readonly ShiftTask[];
  },
  now: number,
): ShiftSummary {
  const until = now + NEXT_SHIFT_HOURS * 3_600_000;
  const dueBy = ({ dueAt }: ShiftTask): number => (dueAt === null ? now : Date.parse(dueAt));
  const soonest = [...tasks].sort((a, b) => dueBy(a) - dueBy(b));
  return {
    asOf: new Date(now).toISOString(),
    openCalls: [...calls].sort((a, b) => Date.parse(a.openedAt) - Date.parse(b.openedAt)),
    craftHeld: [...craft].sort((a, b) => a.name.localeCompare(b.name, 'en', { numeric: true })),
    notBack: [...notBack].sort((a, b) => Date.parse(a.since) - Date.parse(b.since)),
    callBacks: soonest.filter(({ isPromise }) => isPromise),
    dueNext: soonest.filter((task) => !task.isPromise && dueBy(task) <= until),
  };
}

export interface HandOverSignatures {
  readonly outgoing: string | null;
  readonly incoming: string | null;
}

/**
 * Why somebody may not sign a hand-over on a side; null when they may. Two different people sign, the outgoing first,
 * so that the incoming signs what the other has stood for.
 * @example refuseSignature({ outgoing: 'a', incoming: null }, 'incoming', 'a') // 'Two different people sign.'
 */
export function refuseSignature(
  signed: HandOverSignatures,
  side: keyof HandOverSignatures,
  accountId: string,
): string | null {
  if (signed[side] !== null) return 'This side has signed.';
  if (side === 'outgoing') return null;
  if (signed.outgoing === null) return 'The outgoing shift signs first.';
  return signed.outgoing === accountId ? 'Two different people sign.' : null;
}
