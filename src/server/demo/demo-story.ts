/** What the demonstration is made of: the data in fixtures/demo, as it is written there. */
export interface DemoBusiness {
  readonly name: string;
  /** IANA zone in which its times are told. */
  readonly timeZone: string;
  readonly people: readonly DemoPerson[];
  /** Made once, before anything happens, in this order. */
  readonly steps: readonly Step[];
}

export interface DemoPerson {
  readonly signInName: string;
  readonly name: string;
  readonly role: 'staff' | 'manager' | 'administrator' | 'counsel';
  /** Where mail finds them. */
  readonly mail: string;
  readonly phone?: string;
}

/** One incident of the demonstration, told in the order in which it came to the desk. */
export interface DemoIncident {
  /** What it is there to show, for whoever reads the file. */
  readonly shows: string;
  readonly steps: readonly Step[];
}

interface Told {
  /** When it is done, such as "9 days ago, 14:05" or "50 minutes ago". */
  readonly when: string;
  /** Sign-in name of who does it. */
  readonly who: string;
}

/** A request to the API. What stands in braces is filled in: see fill-in.ts. */
export interface RequestStep extends Told {
  readonly send: 'POST' | 'PUT';
  readonly to: string;
  readonly body: unknown;
  /** The name under which the id of the answer is known to later steps. */
  readonly as?: string;
}

/** Signs the same on the reports of an incident that nobody has decided. */
export interface SignStep extends Told {
  readonly sign: 'report' | 'wait' | 'no-report';
  readonly of: string;
  /** Beginnings of the ids of the duties, such as `us-tx/`; every one that is open, unless given. */
  readonly duties?: readonly string[];
  readonly words?: Readonly<Record<string, unknown>>;
}

/** Completes open tasks of an incident. */
export interface DoneStep extends Told {
  /** Ids of the templates of forms/follow-up/tasks.json; every open task, if `all`. */
  readonly done: readonly string[] | 'all';
  readonly of: string;
  readonly evidence: string;
}

/** Takes a picture into evidence: a drawing that says what a photograph would show. */
export interface PictureStep extends Told {
  readonly picture: string;
  readonly of: string;
  readonly name: string;
  readonly about?: Readonly<Record<string, unknown>>;
}

export type Step = RequestStep | SignStep | DoneStep | PictureStep;
