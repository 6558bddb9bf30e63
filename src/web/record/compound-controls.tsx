import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { isJsonObject, type JsonObject, type JsonValue } from '../../../shared/record/json-value.js';
import { fieldWords } from '../../../shared/record/field-words/tell-field.js';
import { parsePosition } from '../../../shared/place/parse-position.js';
import { findPosition } from '../call/find-position.js';
import { pressedNow } from '../device/pressed-now.js';
import { Button } from '../look/button.js';
import { Choice } from '../look/choice.js';
import { Field } from '../look/field.js';
import { fieldMoment } from '../look/moment.js';
import { Note } from '../look/notes.js';
import { Select } from '../look/select.js';
import { call } from '../words/call.js';
import { facts } from '../words/facts.js';
import { record as say } from '../words/record.js';
import { language } from '../words/speak.js';
import type { ControlProps } from './control-props.js';
import { FigureField } from './figure-field.js';
import { dollarsOf, figureOf, instantOf, textOf } from './read-typed.js';
import { useEditor } from './section-editor.js';

const objectOf = (value: JsonValue | undefined): JsonObject => (isJsonObject(value) ? value : {});

/** Some fields of one value, named together. */
function Group({
  label,
  hint,
  error,
  children,
}: Pick<ControlProps, 'label' | 'hint' | 'error'> & { children: ComponentChildren }) {
  return (
    <fieldset class="group">
      <legend>{label}</legend>
      {hint !== undefined && <p class="hint">{hint}</p>}
      {error !== null && <p class="fault">{error}</p>}
      <div class="group-fields">{children}</div>
    </fieldset>
  );
}

/** A figure with the unit in which it was given. */
export function MeasureFields({
  label,
  value,
  onValue,
  error,
  hint,
  units,
}: ControlProps & { units: readonly string[] }) {
  const { amount, unit = units[0] ?? '' } = objectOf(value);
  const set = (figure: JsonValue | undefined, of: JsonValue): void =>
    onValue(figure === undefined ? undefined : { amount: figure, unit: of });
  return (
    <Group label={label} hint={hint} error={error}>
      <FigureField
        label={say.figure}
        figure={amount}
        read={figureOf}
        onFigure={(figure) => set(figure, unit)}
      />
      <Select
        label={say.unit}
        value={textOf(unit)}
        none={say.choose}
        groups={[{ options: units.map((one) => ({ value: one, label: one })) }]}
        onChoose={(chosen) => set(amount, chosen)}
      />
    </Group>
  );
}

/** US dollars: one figure, or between two, or looked into and not known. */
export function AmountFields({ label, value, onValue, error, hint }: ControlProps) {
  const range = isJsonObject(value)
    ? value
    : { low: value === 'unknown' ? undefined : value, high: undefined };
  const [low, high] = [range['low'], range['high']];
  const set = (from: JsonValue | undefined, to: JsonValue | undefined): void => {
    if (to === undefined) onValue(from);
    else onValue({ low: from ?? 0, high: to });
  };
  return (
    <Group label={label} hint={hint} error={error}>
      <FigureField
        label={facts.lowest}
        figure={low}
        read={dollarsOf}
        onFigure={(figure) => set(figure, high)}
      />
      <FigureField
        label={facts.highest}
        hint={facts.highestHint}
        figure={high}
        read={dollarsOf}
        onFigure={(figure) => set(low, figure)}
      />
      <UnknownButton value={value} onValue={onValue} />
    </Group>
  );
}

/** That nobody knows the figure, which is an answer; pressed again it is taken back. */
function UnknownButton({ value, onValue }: Pick<ControlProps, 'value' | 'onValue'>) {
  const isUnknown = value === 'unknown';
  return (
    <Button pressed={isUnknown} onPress={() => onValue(isUnknown ? undefined : 'unknown')}>
      {facts.unknown}
    </Button>
  );
}

export function HoursField({ label, value, onValue, error, hint }: ControlProps) {
  return (
    <Group label={label} hint={hint} error={error}>
      <FigureField
        label={say.figure}
        unit={facts.hours}
        figure={value === 'unknown' ? undefined : value}
        read={figureOf}
        onFigure={onValue}
      />
      <UnknownButton value={value} onValue={onValue} />
    </Group>
  );
}

/** A time of something that was done: pressed now, or entered afterwards. */
export function StampFields({ label, value, onValue, error, hint }: ControlProps) {
  const { timeZone } = useEditor();
  const { at } = objectOf(value);
  const entered = (text: string): void => {
    const instant = instantOf(text, timeZone);
    onValue(instant === undefined ? undefined : { at: instant, how: 'entered' });
  };
  return (
    <Group label={label} hint={hint} error={error}>
      <Field
        label={say.time}
        hint={say.clocks(timeZone)}
        type="datetime-local"
        value={typeof at === 'string' ? fieldMoment(at, timeZone) : ''}
        onInput={entered}
      />
      <Button onPress={() => onValue({ ...pressedNow() })}>{say.now}</Button>
    </Group>
  );
}

/** When it happened, as well as anybody can say. */
export function OccurredFields({ label, value, onValue, error, hint }: ControlProps) {
  const { timeZone } = useEditor();
  const { at, until, precision, withinMinutes } = objectOf(value);
  const { values } = fieldWords(language());
  const set = (change: JsonObject): void => {
    const next = { ...objectOf(value), ...change };
    onValue(next['at'] === undefined ? undefined : { precision: 'to-the-minute', ...next });
  };
  const moment = (instant: JsonValue | undefined): string =>
    typeof instant === 'string' ? fieldMoment(instant, timeZone) : '';
  const choose = (how: string): void => {
    const { until: end, withinMinutes: give, ...rest } = objectOf(value);
    const kept = {
      ...(how === 'span' && end !== undefined && { until: end }),
      ...(how === 'about' && give !== undefined && { withinMinutes: give }),
    };
    onValue({ ...rest, ...kept, precision: how });
  };
  return (
    <Group label={label} hint={hint} error={error}>
      <Field
        label={precision === 'span' ? say.from : say.time}
        hint={say.clocks(timeZone)}
        type="datetime-local"
        value={moment(at)}
        onInput={(text) => set({ at: instantOf(text, timeZone) as JsonValue })}
      />
      {at !== undefined && (
        <Choice
          legend={say.howExact}
          value={textOf(precision)}
          options={Object.entries(values.precision).map(([one, words]) => ({ value: one, label: words }))}
          onChoose={choose}
        />
      )}
      {precision === 'about' && (
        <Field
          label={say.give}
          inputMode="numeric"
          unit="min"
          value={textOf(withinMinutes)}
          onInput={(text) => set({ withinMinutes: figureOf(text) as JsonValue })}
        />
      )}
      {precision === 'span' && (
        <Field
          label={say.until}
          type="datetime-local"
          value={moment(until)}
          onInput={(text) => set({ until: instantOf(text, timeZone) as JsonValue })}
        />
      )}
    </Group>
  );
}

/** A position as it was said or read; it is read in any of the usual ways. */
export function PositionFields({ label, value, onValue, error, hint }: ControlProps) {
  const { asSaid, latitude, longitude } = objectOf(value);
  const said = textOf(asSaid) || (latitude === undefined ? '' : `${textOf(latitude)}, ${textOf(longitude)}`);
  const write = (text: string): void => {
    if (text.trim() === '') return onValue(undefined);
    const read = parsePosition(text);
    onValue(
      read.ok ? { latitude: read.latitude, longitude: read.longitude, asSaid: text } : { asSaid: text },
    );
  };
  const [trouble, setTrouble] = useState<string | null>(null);
  const locate = async (): Promise<void> => {
    const found = await findPosition();
    setTrouble(found.kind === 'found' ? null : call.where[found.kind === 'refused' ? 'refused' : 'notFound']);
    if (found.kind !== 'found') return;
    const { kind, ...where } = found;
    void kind;
    onValue(where);
  };
  return (
    <Group label={label} hint={hint} error={error}>
      <Field label={say.asSaid} hint={say.asSaidHint} value={said} onInput={write} />
      <Button onPress={() => void locate()}>{say.thisPhone}</Button>
      {trouble !== null && <Note kind="error">{trouble}</Note>}
    </Group>
  );
}
