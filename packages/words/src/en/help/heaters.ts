/** Of a heater: nameplate, instructions, and what is around it. */
export const HELP_HEATERS: Readonly<Record<string, string>> = {
  'heaters.name': 'A short name everybody on the job uses, such as left heater.',
  'heaters.planned': 'Yes for the heater you will install. No for the old one that comes out.',
  'heaters.fuel': 'On the nameplate, near the input. If the plate and the gas in the pipe differ, stop.',
  'heaters.node':
    'The joint of the gas piping this heater hangs on. Pick one that is there or name a new one.',
  'heaters.input':
    'On the nameplate: input in Btu/h, often by fuel and altitude. Take the one for the gas you have.',
  'heaters.inputLeast':
    'On the plate of a modulating or two-stage burner: the lowest input. Leave it out for a one-stage burner.',
  'heaters.efficiency':
    'On the plate or the yellow energy label: thermal efficiency. Output divided by input gives the same.',
  'heaters.inletLeast':
    'On the plate: minimum inlet gas pressure, for the input it is rated at. Not the manifold pressure.',
  'heaters.inletGreatest': 'On the plate: maximum inlet gas pressure. Above it the gas valve may not hold.',
  'heaters.altitudeGreatest':
    'On the plate or in the instructions: altitude up to which it runs without a kit or other orifices.',
  'heaters.altitudeInput':
    'Some plates print a second input for altitude. Enter it only if it is for this altitude.',
  'heaters.shutOffDistance':
    'Follow the pipe from the gas valve of the heater to the hand valve and measure along it.',
  'heaters.sedimentTrap':
    'Look right before the gas inlet: a tee with a capped nipple hanging straight down.',
  'heaters.flowLeast': 'In the instructions, sometimes on the plate: the least water flow through it.',
  'heaters.flowGreatest':
    'In the instructions: the most water that may pass through it. More needs a bypass.',
  'heaters.loss':
    'In the instructions: a curve or table of head loss against flow. Three or four points are enough.',
  'heaters.header': 'The size of the water unions, by name. It is cast or printed near them.',
  'heaters.pressureGreatest': 'On the plate: maximum working pressure of the water side.',
  'heaters.riseGreatest':
    'In the instructions: the largest temperature rise allowed between inlet and outlet.',
  'heaters.inletWaterLeast':
    'In the instructions: the coldest water it may run on for long. Colder water drips flue water on it.',
  'heaters.innerBypass':
    'Some heaters send water round again inside. The instructions may give the share; else leave it out.',
  'heaters.heightAbovePool':
    'Level from the pool surface to the water header. Below when the header is lower than the surface.',
  'heaters.switchKind':
    'Look at the water side: a small pressure switch with a tube, or a paddle in the pipe.',
  'heaters.switchLeast': 'In the instructions: the lowest pressure its water switch can be set to.',
  'heaters.switchGreatest': 'In the instructions: the highest pressure its water switch can be set to.',
  'heaters.switchDifferential':
    'Difference between the pressure at which it closes and the lower one at which it opens.',
  'heaters.switchSetting': 'The dial of the pressure switch as found. Note it before anybody turns it.',
  'heaters.volts':
    'On the plate. Many take either of two voltages by a selector: enter the one it is set for.',
  'heaters.amperes': 'On the plate: running current in amperes at that voltage.',
  'heaters.runOnLeast':
    'In the instructions: how long water must flow after the burner goes out. Zero when it asks nothing.',
  'heaters.headerMetal': 'Knock on the header or hold a magnet to it: metal, or plastic?',
  'heaters.width': 'Of the cabinet from left to right, seen from the front. Measure it or read the drawing.',
  'heaters.depth': 'Of the cabinet from front to back, pipes not counted.',
  'heaters.height': 'Of the cabinet from its foot to its top, the vent not counted.',
  'heaters.mass': 'In the instructions or on the carton: weight without water.',
  'heaters.waterSide': 'Stand in front of the controls: on which side are the water pipes?',
  'heaters.waterSideMovable': 'The instructions say whether the header can be moved to the other side.',
  'heaters.listed': 'Look on the plate for the mark of a testing laboratory.',
  'heaters.clearanceWater':
    'On the plate or in the instructions: least clearance on the side of the water pipes.',
  'heaters.clearanceFar': 'Least clearance on the side across from the water pipes.',
  'heaters.clearanceBack': 'Least clearance behind it, on the plate or in the instructions.',
  'heaters.clearanceFront': 'Least clearance in front of it. Room to work counts too.',
  'heaters.clearanceAbove':
    'Least clearance above it, to an eave or a ceiling. Often larger than all others.',
  'heaters.soundLevel':
    'In the data of the maker: sound level in decibels. The distance it is told for comes next.',
  'heaters.soundDistance': 'The distance for which that sound level is told.',
  'heaters.isolated': 'Can valves shut it off from the rest of the loop, with water standing in it?',
  'heaters.reliefAsked': 'The plate or the instructions ask for a relief valve.',
  'heaters.reliefValve': 'Look for a relief valve on the heater itself, with no valve between the two.',
  'heaters.reliefSet': 'On the metal tag of the relief valve: its set pressure.',
  'heaters.reliefCapacity': 'On the same tag: capacity in Btu/h.',
  'heaters.reliefSteam': 'On the same tag: steam by weight, where no Btu/h stand on it.',
  'heaters.reliefDischarge':
    'Its pipe is full size, open, has no thread at its end and leads where nobody is scalded.',
  'heaters.reliefDischargeHeight': 'From the floor or ground up to the end of that pipe.',
  'heaters.shutOffAccessible': 'You can reach and turn its gas valve without moving or undoing anything.',
  'heaters.gasUnion': 'A union or flange between that valve and the heater, so that it can be taken out.',
  'heaters.trapNipple': 'Length of the capped nipple below the tee of the sediment trap.',
  'heaters.ignition':
    'A spark or hot surface is electronic. A small flame that burns all day is a standing pilot.',
  'heaters.made': 'On the plate, as year and month. Some serial numbers hide it: ask the maker.',
  'heaters.integratedEfficiency': 'On the energy label of newer heaters: integrated thermal efficiency.',
  'heaters.offSwitch': 'A switch that turns it off and leaves the thermostat as it is: where?',
  'heaters.offSwitchDistance': 'From the heater to that switch, where it stands beside it.',
  'heaters.reliefStamp': 'On the tag of the relief valve: the letters of the boiler code.',
  'heaters.controlsBarred': 'Guests of the pool cannot reach its controls: a lock, a fence or a room.',
  'heaters.exchanger': 'Tubes with thin fins all along, or anything else. The instructions show it.',
  'heaters.yearlyService': 'Somebody qualified services it once a year, and the owner knows that.',
  'heaters.venting':
    'Outdoor: flue gas leaves at the top of the cabinet. Else look at the vent and the blower.',
};
