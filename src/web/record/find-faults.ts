import { findForbiddenChanges } from '../../../shared/record/check-amendment.js';
import { findChanges } from '../../../shared/record/find-changes.js';
import type { SectionName } from '../../../shared/record/incident-record.js';
import type { JsonObject } from '../../../shared/record/json-value.js';
import type { FieldError } from '../../../shared/kernel/field-error.js';
import { readSection } from '../../../shared/wire/record-reading.js';
import { record as say } from '../words/record.js';
import { addsOnly } from './adds-only.js';
import { pathOfPointer } from './edit-document.js';
import type { SectionDraft } from './section-draft.js';

/** What is wrong at a path of the form, in words; `reason` and `source` stand for the two questions about the whole. */
export interface FormFault {
  readonly path: string;
  readonly detail: string;
}

/**
 * What keeps a section from being sent, each fault where it stands.
 * @param document as it would be sent
 * @param reason why words that stand in the record are changed
 */
export function findFaults(
  { base, finished, source }: SectionDraft,
  section: SectionName,
  document: JsonObject,
  reason: string,
): FormFault[] {
  const read = readSection(section, document);
  const faults = read.ok ? [] : read.errors.map((error) => faultOf(document, error));
  const lasting = finished ? findForbiddenChanges(findChanges(base, document)) : [];
  const why = !addsOnly(base, document) && reason.trim() === '';
  const howMissing = source === undefined && faults.some(({ detail }) => detail === say.source.missing);
  return [
    ...(howMissing ? [{ path: 'source', detail: say.source.choose }] : []),
    ...faults,
    ...lasting.map(({ pointer, detail }) => ({ path: pointer, detail })),
    ...(why ? [{ path: 'reason', detail: say.reason.missing }] : []),
  ];
}

/** The faults that the service found in what was sent. */
export function faultsOfAnswer(document: JsonObject, errors: readonly FieldError[]): FormFault[] {
  return errors.map(({ pointer, detail }) =>
    pointer.startsWith('/document')
      ? faultOf(document, { pointer: pointer.slice('/document'.length), detail })
      : { path: pointer.slice(1), detail },
  );
}

function faultOf(document: JsonObject, { pointer, detail }: FieldError): FormFault {
  const path = pathOfPointer(document, pointer);
  return path.endsWith('/known') ? { path, detail: say.source.missing } : { path, detail };
}
