/** What only managers fill in about craft. */
export const fleetForms = {
  title: 'Add a craft',
  lead: 'Name and type are enough to begin with. A craft is never deleted: records speak of it.',
  add: 'Add it to the fleet',
  keep: 'Keep the change',
  none: 'Not entered',
  hints: {
    unitName: 'As people call it, such as PWC 7. No two craft have the same.',
    hullNumber: 'As it stands on the hull. What is odd about it is told and never refused.',
    registrationNumber: 'As it stands on the bow.',
    capacityLb: 'Of people, motor and gear, as the capacity plate says.',
    stationId: 'Where it usually leaves from.',
    retiredOn: 'It then leaves the lists, and stays in every record.',
  },
};
