import type { SenderChoices } from '../../../shared/hand-over/sender-choices.js';
import type { PersonActor } from '../accounts/accounts.api.js';
import { refuse } from '../platform/http/refuse.js';
import type { Override } from './hand-over-book.js';
import type { HandOverForms } from './hand-over-forms.js';
import type { Matter } from './matter-reader.js';
import type { PacketPlan } from './plan-packet.js';

/**
 * Refuses choices that name nothing: a slip would else leave as if it had been heeded.
 * @throws ProblemException 422 naming the choice
 */
export function assertNamed(
  { choices, strangers, person }: SenderChoices,
  matter: Matter,
  plan: PacketPlan,
  { kinds }: HandOverForms,
): void {
  const named = new Set([
    ...[...kinds.kinds, ...kinds.attachments].map(({ kind }) => kind),
    ...plan.fields.map(({ section, path }) => `${section}:${path}`),
    ...plan.files.map(({ file }) => file.id),
    ...plan.files.map(({ file }) => `stranger:${file.id}`),
  ]);
  choices.forEach(({ what }, place) => {
    if (!named.has(what)) refuse(422, `There is no kind, field or file ${what}.`, `/choices/${place}/what`);
  });
  const files = new Set(plan.files.map(({ file }) => file.id));
  Object.keys(strangers).forEach((id, place) => {
    if (!files.has(id)) refuse(422, `There is no file ${id}.`, `/strangers/${place}/id`);
  });
  const { people = [] } = matter.record.sections.people ?? {};
  if (person !== undefined && !people.some(({ id }) => id === person)) {
    refuse(422, `The record knows no person ${person}.`, '/person');
  }
}

/**
 * What of the choices overrides the profile; each needs a manager and a reason.
 * @throws ProblemException 403, 422
 */
export function overridesOf(plan: PacketPlan, { choices }: SenderChoices, actor: PersonActor): Override[] {
  const verdicts = [...plan.fields, ...plan.files, ...plan.others].map(({ verdict }) => verdict);
  if (!verdicts.some(({ by }) => by === 'override')) return [];
  if (actor.role !== 'manager') refuse(403, 'Only a manager overrides a profile, and says why.', '/choices');
  const overriding = choices.filter(({ what }) => overrides(plan, what));
  return overriding.map(({ what, reason }) => {
    const place = choices.findIndex((one) => one.what === what);
    if (reason === undefined) {
      return refuse(422, `${what} stays by the profile: say why it goes.`, `/choices/${place}/reason`);
    }
    return { id: `o${place + 1}`, what, reason };
  });
}

function overrides({ fields, files, others }: PacketPlan, what: string): boolean {
  return [
    ...fields.map(({ section, path, kind, verdict }) => ({ names: [kind, `${section}:${path}`], verdict })),
    ...files.map(({ file, kind, verdict }) => ({ names: [kind, file.id], verdict })),
    ...others.map(({ kind, verdict }) => ({ names: [kind], verdict })),
  ].some(({ names, verdict }) => verdict.by === 'override' && names.includes(what));
}
