/** Of time and place, of what happened, and of weather and water. */
export const timeAndPlace = {
  title: 'Time and place',
  lead: 'When and where it happened.',
  fields: {
    '/occurred': 'When it happened',
    '/timeZone': 'Time zone of the place',
    '/position': 'Position',
    '/states': 'State',
    '/waterBody': 'Name of the water',
    '/nearestTown': 'Nearest city or town',
    '/county': 'County',
    '/description': 'The place, in words',
    '/namedPlace': 'Named place of ours',
    '/federalWaters': 'Waters of the United States?',
  },
  help: {
    '/position': 'Degrees, north and east positive (WGS 84). Below, as it was said.',
    '/states': 'Two letters, such as TX. Several while it is not clear on which side of a line it was.',
    '/description':
      'Marks that somebody else would find again: the third dock, a stone’s throw off the point.',
    '/federalWaters': 'Waters subject to the jurisdiction of the United States (33 CFR 173.51).',
  },
};

export const account = {
  title: 'What happened',
  lead: 'What was seen and said, first event first. Nobody’s fault is asked here.',
  fields: {
    '/casualtyTypes': 'Kind of occurrence, first event first',
    '/involvesVesselOrEquipment': 'Was a craft or its equipment involved?',
    '/oilSheen': 'Oil on the water?',
    '/bridgeStruck': 'Was a bridge struck?',
    '/propulsionOrSteeringLost': 'Was propulsion or steering lost?',
    '/seaworthinessImpaired': 'Was a craft made unsafe to go out in?',
    '/whatHappened': 'What happened, in order',
    '/equipmentFailures': 'Equipment that failed',
    '/contributingFactors': 'What contributed',
  },
  help: {
    '/whatHappened': 'What was seen, heard and done, and by whom.',
    '/equipmentFailures': 'What stopped working, and when it was last seen working.',
    '/contributingFactors': 'Facts and no blame: wind, a wake, a broken part.',
  },
};

export const conditions = {
  title: 'Weather and water',
  lead: 'As it was there and then; who saw it or what was read.',
  fields: {
    '/observedAt': 'When it was like this',
    '/weather': 'Weather',
    '/water': 'Water',
    '/waves': 'Height of the waves',
    '/wind': 'Wind',
    '/gusts': 'Gusts',
    '/windFrom': 'Wind from',
    '/visibility': 'Visibility',
    '/visibilityDistance': 'How far one could see',
    '/light': 'Light',
    '/airTemperature': 'Temperature of the air',
    '/waterTemperature': 'Temperature of the water',
    '/waterDepth': 'Depth of the water',
    '/waterLevel': 'Level of the lake or river',
    '/current': 'Current',
    '/currentSpeed': 'Speed of the current',
    '/traffic': 'Other traffic',
    '/hazards': 'Things in the way',
    '/forecastAvailable': 'What forecast there was',
    '/forecastUsed': 'What forecast was looked at, and by whom',
  },
  help: {
    '/water': 'Calm, choppy, rough, very rough.',
    '/waves': 'The measure itself: each form draws its bands elsewhere.',
    '/windFrom': 'Where it comes from: south-east.',
    '/waterLevel': 'As posted that day, and whether stumps or bars show.',
    '/hazards': 'Stumps, bars, buoys off station, swimmers, lines.',
  },
};
