import type { Stamp } from '../../../shared/call/stamp.js';
import type { Ternary } from '../../../shared/kernel/truth.js';
import type { JsonObject } from '../../../shared/record/json-value.js';

/** Which entry of the call page it came by: help is needed now, somebody tells it afterwards, or damage found at check-in. */
export type Entry = 'now' | 'late' | 'check-in';

export type StampName = 'called' | 'boatAway' | 'onScene' | 'allAshore';
export const STAMP_NAMES: readonly StampName[] = ['called', 'boatAway', 'onScene', 'allAshore'];

/** Where it happened, and how that is known. */
export interface Where {
  readonly how: 'phone' | 'place' | 'written' | 'map' | 'words';
  readonly latitude?: number;
  readonly longitude?: number;
  readonly accuracyM?: number;
  /** As it was said: coordinates, the name of the place, or plain words. */
  readonly asSaid?: string;
  /** Id of a named place. */
  readonly placeId?: string;
}

/** One answer, with the moment at which it was given. */
export interface Answered<Value> {
  readonly value: Value;
  readonly at: string;
}

export interface Answers {
  readonly craft?: Answered<readonly string[]>;
  readonly where?: Answered<Where>;
  readonly people?: Answered<number>;
  readonly accounted?: Answered<Ternary>;
  readonly hurt?: Answered<Ternary>;
  /** Slug of a casualty type, or null where none of the offered ones fits. */
  readonly happened?: Answered<string | null>;
  readonly said?: Answered<string>;
  readonly callerName?: Answered<string>;
  readonly callBack?: Answered<string>;
  readonly when?: Answered<string>;
  readonly whyNow?: Answered<string>;
}

export type Question = keyof Answers;

/** What is asked, one after the other. */
export type Step = 'caller' | 'craft' | 'where' | 'accounted' | 'hurt' | 'happened';

export const STEPS: Readonly<Record<Entry, readonly Step[]>> = {
  now: ['craft', 'where', 'accounted', 'hurt', 'happened'],
  late: ['caller', 'craft', 'where', 'hurt', 'happened'],
  'check-in': ['craft', 'happened'],
};

/** A line of the timeline, as the record keeps it. */
export interface CallLine {
  readonly id: string;
  readonly at: Stamp;
  readonly what: string;
}

/** What of a section was queued, and the version that the service has of it. */
export interface SentPart {
  readonly document: JsonObject;
  readonly version?: number;
  /** Somebody else changed the same: their words stand in the section, ours in the timeline. */
  readonly both?: boolean;
}

/** A call as this device holds it, from the first touch until it is a day old and all of it has arrived. */
export interface CallDraft {
  /** Id of the incident, made here so that everything can be written on without signal. */
  readonly id: string;
  readonly entry: Entry;
  /** Typed in from a sheet of paper. */
  readonly fromPaper: boolean;
  readonly taken: Stamp;
  readonly takenBy: string | null;
  readonly answers: Answers;
  /** Questions that were answered or left, and are asked no more. */
  readonly passed: readonly Step[];
  readonly stamps: Readonly<Partial<Record<StampName, Stamp>>>;
  readonly lines: readonly CallLine[];
  readonly photographs: number;
  /** Given by the service. */
  readonly reference?: string;
  /** When the last of it arrived. */
  readonly sentAt?: string;
  readonly parts: Readonly<Record<string, SentPart>>;
}
