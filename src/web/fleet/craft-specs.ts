import { fieldWords } from '../../../shared/record/field-words/tell-field.js';
import {
  engineDrives,
  fuels,
  hullMaterials,
  propulsions,
  vesselTypes,
} from '../../../shared/vocabulary/vessel-types.js';
import type { FieldSpec, SpecOption } from '../lists/field-spec.js';
import { fleet as say } from '../words/fleet.js';
import { fleetForms as forms } from '../words/en/fleet-forms.js';
import { language } from '../words/speak.js';

const { labels, units } = say;
const { hints, none } = forms;

type Slugs = readonly { readonly slug: string; readonly label: string }[];
const optionsOf = (list: Slugs): SpecOption[] => list.map(({ slug: value, label }) => ({ value, label }));

/** `typeLabel('pontoon-boat')` is `'Pontoon boat'`, in the language of the reader. */
export const typeLabel = (slug: string): string => fieldWords(language()).vocabulary[slug] ?? slug;

/** The fields of a craft, in the order of FleetCraftDto. */
export function craftSpecs(stations: readonly SpecOption[]): readonly FieldSpec[] {
  const types = vesselTypes.map(({ slug }) => ({ value: slug, label: typeLabel(slug) }));
  return [
    { name: 'unitName', label: labels.unitName, hint: hints.unitName, as: 'line', required: true },
    { name: 'type', label: labels.type, as: 'one', options: types, none, required: true },
    { name: 'colours', label: labels.colours, as: 'words' },
    { name: 'hullNumber', label: labels.hullNumber, hint: hints.hullNumber, as: 'line' },
    {
      name: 'registrationNumber',
      label: labels.registrationNumber,
      hint: hints.registrationNumber,
      as: 'line',
    },
    { name: 'hullMaterial', label: labels.hullMaterial, as: 'one', options: optionsOf(hullMaterials), none },
    { name: 'propulsion', label: labels.propulsion, as: 'one', options: optionsOf(propulsions), none },
    { name: 'engineDrive', label: labels.engineDrive, as: 'one', options: optionsOf(engineDrives), none },
    { name: 'fuel', label: labels.fuel, as: 'one', options: optionsOf(fuels), none },
    { name: 'make', label: labels.make, as: 'line' },
    { name: 'model', label: labels.model, as: 'line' },
    { name: 'modelYear', label: labels.modelYear, as: 'number' },
    { name: 'lengthFt', label: labels.lengthFt, as: 'number', unit: units.feet },
    { name: 'engineMake', label: labels.engineMake, as: 'line' },
    { name: 'engineNumber', label: labels.engineNumber, as: 'line' },
    { name: 'horsepower', label: labels.horsepower, as: 'number', unit: units.horsepower },
    { name: 'capacityPeople', label: labels.capacityPeople, as: 'number', unit: units.people },
    {
      name: 'capacityLb',
      label: labels.capacityLb,
      hint: hints.capacityLb,
      as: 'number',
      unit: units.pounds,
    },
    { name: 'stationId', label: labels.stationId, hint: hints.stationId, as: 'one', options: stations, none },
    { name: 'retiredOn', label: labels.retiredOn, hint: hints.retiredOn, as: 'day' },
  ];
}
