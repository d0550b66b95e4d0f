/** Of the flue gas and its way out: plate of the heater, sealed vents, chimneys, condensate, shared vents. */
export const HELP_VENTS: Readonly<Record<string, string>> = {
  'heaters.ventCategory':
    'On the nameplate: a Roman figure, I to IV. II, III and IV need a sealed vent of their own kind.',
  'heaters.flueOutlet': 'Measure across the inside of the flue collar or draught hood, heater cold.',
  'heaters.stackTemperature':
    'In the instructions: temperature of the flue gas at rated input. What you measure is entered under flue tests.',
  'heaters.ventLengthGreatest':
    'In the venting table of the instructions, for the diameter you use. Elbows count as length there.',
  'heaters.ventElbow': 'In the same table: the length that one elbow of 90° takes off the longest vent.',
  'spots.openingScreen':
    'Measure between two wires of the screen or take it from its label. Zero where there is no screen.',
  'spots.intakeHeight':
    'From the ground, with the deepest snow in mind, up to the underside of the air intake outdoors.',
  'spots.ductAlone':
    'Follow each air duct from end to end: it may serve this room only, and one opening of it.',
  'spots.ductRises':
    'Lay a level on the duct of the high opening: warm air must not have to run downhill to get out.',
  'spots.dryerAir':
    'On the plate or in the instructions of the dryer; add them up. Leave it out where none stands in the room.',
  'spots.hoodAir':
    'On the plate of the hood, at its highest speed; add them up. Leave it out where none is open to the room.',
  'spots.supplyInterlock':
    'Stop the fan that blows air in: the burners must go out. Try it only with the maker’s instructions at hand.',
  'spots.ventMaterial':
    'Printed along the pipe. Only a material that the instructions of the heater name may stay.',
  'spots.ventListed':
    'The label on the pipe names the category and the laboratory; the instructions name the make. Both must agree.',
  'spots.ventSlope':
    'Level and tape on a horizontal part: rise over run, such as 1/4 in for each foot. Condensing: it falls back to the heater.',
  'spots.singleWallCold':
    'Follow the pipe: does any single-wall part pass outdoors, an attic, or a space that is not heated?',
  'spots.chimneyArea':
    'Inside the tile or liner, from the drawing or through the cleanout with everything off and cold. Have an old chimney inspected first.',
  'spots.condensateDrain':
    'Look below the heater and the vent for a hose with a trap: does it fall to a drain, or does a pump lift it?',
  'spots.condensateNeutral':
    'Look for a cartridge of stone in the drain, or a drain that bears acid all the way to the public sewer.',
  'spots.condensateFrost':
    'Trap and hose stand where it does not freeze, are heated, or are drained before the cold.',
  'spots.condensateCapacity': 'The smallest of three plates: pump at its lift, neutraliser, drain.',
  'spots.commonFittings': 'Count each elbow of the part that all heaters share.',
  'spots.commonManifold': 'Do the connectors join in a level pipe before the shared vent goes up?',
  'spots.terminalSoffit': 'Tape from the top of the terminal up to the soffit or overhang.',
  'spots.terminalDeck':
    'Look up from the terminal: is there a deck, and is the space below it open on two sides?',
  'spots.terminalDeckGap': 'Tape from the top of the terminal up to the underside of that deck.',
  'spots.adjacentOpening':
    'Level, from the terminal to the nearest window, door or vent of the building next door. From your side of the line, by laser or plan.',
};
