/** Rules of the codes that ask for a thing rather than for a figure of the plant: gas piping, energy, boilers, permits. */
import type { RuleWords } from '../dictionary.ts';

export const RULES_CODES: Readonly<Record<string, RuleWords>> = {
  'gas.design-drop': {
    title: 'Sized for no more drop than the code allows',
    asks: 'The pressure drop for which the piping is sized is no more than the code allows at this supply pressure.',
    mend: 'Size the sections for the smaller drop, or ask the gas supplier for a higher pressure and a line regulator.',
  },
  'gas.shut-off-accessible': {
    title: 'Gas shut-off can be reached',
    asks: 'The heater’s own gas valve can be reached and turned without a tool, a ladder or anything moved.',
    mend: 'Move the valve to where a hand finds it at once.',
  },
  'gas.union': {
    title: 'Union behind the gas shut-off',
    asks: 'A union or flange stands between shut-off and heater, so that the heater comes away with the gas shut.',
    mend: 'Fit a union right behind the shut-off, on its heater side.',
  },
  'gas.sediment-trap-nipple': {
    title: 'Sediment trap long enough',
    asks: 'The capped nipple of the sediment trap is as long as the code’s figure shows.',
    mend: 'Fit a longer nipple.',
  },
  'gas.csst-bonded': {
    title: 'Corrugated gas tubing bonded',
    asks: 'Corrugated tubing is bonded to the building’s ground: a stroke of lightning nearby can burn holes into it.',
    mend: 'Have a licensed electrician bond it where the gas enters the building.',
  },
  'gas.csst-bond-size': {
    title: 'Bond of the gas tubing thick enough',
    asks: 'The conductor of that bond is at least of the size asked.',
    mend: 'Run a larger conductor.',
  },
  'gas.csst-bond-length': {
    title: 'Bond of the gas tubing short enough',
    asks: 'The conductor of that bond is no longer than allowed.',
    mend: 'Bond at a nearer point of the ground, or drive electrodes there and join them to the building’s.',
  },
  'gas.burial-depth': {
    title: 'Gas pipe buried deep enough',
    asks: 'Earth and paving over a buried section are at least as thick as the code asks.',
    mend: 'Lay it deeper, or guard it as the authority accepts, before the trench is closed.',
  },
  'gas.plastic-underground': {
    title: 'Plastic gas pipe in the ground only',
    asks: 'Polyethylene lies outdoors and in the ground.',
    mend: 'Replace what is inside or above the ground by metal.',
  },
  'gas.plastic-risers': {
    title: 'Risers of the plastic gas pipe',
    asks: 'Polyethylene comes up through listed risers with metal above the ground.',
    mend: 'Fit a riser made for it at each end.',
  },
  'gas.tracer': {
    title: 'Tracer wire along the plastic gas pipe',
    asks: 'A wire along the pipe, with both ends above the ground, lets it be found before somebody digs.',
    mend: 'Lay a tracer wire along it and bring up both ends before the trench is closed.',
  },
  'gas.tracer-size': {
    title: 'Tracer wire thick enough',
    asks: 'The tracer wire is at least of the size asked.',
    mend: 'Lay a thicker wire with insulation for burial.',
  },
  'gas.test-gas': {
    title: 'Pressure test with air or inert gas',
    asks: 'The test is made with air or an inert gas, never with oxygen or the fuel gas.',
    mend: 'Let it out safely and test with air or nitrogen.',
  },
  'gas.no-leak': {
    title: 'No gas leak',
    asks: 'With gas on, soap or a detector finds nothing at any joint.',
    mend: 'Shut the gas off and keep sparks away. Repair, test again, and only then turn it on.',
  },
  'gas.purge-where': {
    title: 'Air in new piping let out safely',
    asks: 'Piping of large size or high pressure is purged outdoors; smaller piping through a burner or watched by a detector.',
    mend: 'Purge outdoors, or at the least through a burner or with a detector at the outlet all the time.',
  },
  'gas.purge-inert': {
    title: 'Inert gas before fuel gas in large piping',
    asks: 'In a large system an inert gas drives the air out before fuel gas enters.',
    mend: 'Purge with nitrogen first.',
  },
  'gas.purge-from-ignition': {
    title: 'Purge outlet away from ignition',
    asks: 'The outlet of the purge is far enough from anything that can light it.',
    mend: 'Lead the outlet farther away.',
  },
  'gas.purge-from-openings': {
    title: 'Purge outlet away from openings',
    asks: 'The outlet of the purge is far enough from windows, doors and other openings.',
    mend: 'Lead the outlet farther away.',
  },
  'gas.purge-from-intake': {
    title: 'Purge outlet away from air intakes',
    asks: 'The outlet of the purge is far enough from the inlets of fans.',
    mend: 'Lead the outlet farther away, or keep those fans off.',
  },
  'gas.purge-end': {
    title: 'Purged until the pipe holds fuel gas',
    asks: 'A purge ends when the detector shows as much fuel gas as the code asks.',
    mend: 'Purge on until the detector shows it.',
  },
  'gas.permit': {
    title: 'Permit for gas work',
    asks: 'The permit or notice is asked for before the work begins and granted before pipe is laid. A repair needs none here unless one was entered.',
    mend: 'Ask the authority at the address before going on.',
  },
  'gas.licence': {
    title: 'Licence for gas work',
    asks: 'Who does the gas work has the licence for it at this place and input.',
    mend: 'Leave the gas work to somebody licensed for it.',
  },
  'power.permit': {
    title: 'Permit for electrical work',
    asks: 'The permit or notice is asked for before the work begins and granted before anything is wired.',
    mend: 'Ask the authority at the address before going on.',
  },
  'power.licence': {
    title: 'Licence for electrical work',
    asks: 'Who does the electrical work has the licence for it at this place.',
    mend: 'Leave the wiring to a licensed electrician.',
  },
  'place.permit': {
    title: 'Building or mechanical permit',
    asks: 'The permit for setting or replacing the heater is asked for before and granted when it is set.',
    mend: 'Ask the building department at the address before going on.',
  },
  'heat.cover': {
    title: 'Cover on heated water outdoors',
    asks: 'Heated water outdoors has a cover that keeps vapour in, unless most of its heat is from sun or heat pump.',
    mend: 'Give it a cover; it saves more gas than anything else.',
  },
  'heat.primary-source': {
    title: 'Gas only beside another source of heat',
    asks: 'At a new pool or spa sun, a heat pump or renewable energy gives the share asked; gas stands in for the rest.',
    mend: 'Ask the building department which first source and which exemption hold here before a gas heater is ordered.',
  },
  'heat.no-pilot': {
    title: 'No standing pilot',
    asks: 'The burner is lit when heat is called for; no flame burns all day.',
    mend: 'Choose a heater with electronic ignition.',
  },
  'heat.efficiency-least': {
    title: 'Heater as efficient as the law asks',
    asks: 'The thermal efficiency on the nameplate is at least what the law asks of heaters made on that day.',
    mend: 'A heater made after the limit rose may not be sold below it: ask the supplier.',
  },
  'heat.integrated-efficiency': {
    title: 'Heater as efficient as the law asks, over the year',
    asks: 'The integrated thermal efficiency, which counts standby and electricity, is at least what the law asks at this input.',
    mend: 'A heater below the limit may not be sold: ask the supplier.',
  },
  'power.off-switch': {
    title: 'Switch to turn the heater off',
    asks: 'A switch outside turns the heater off and leaves its thermostat as it is. A breaker alone is none.',
    mend: 'Fit a switch on the heater, or beside it where the code allows that.',
  },
  'power.off-switch-distance': {
    title: 'Off switch near the heater',
    asks: 'Where the switch is not on the heater itself, it is no farther from it than allowed.',
    mend: 'Move the switch closer.',
  },
  'power.time-switch': {
    title: 'Heater and pump on a timer',
    asks: 'Heater and pump are turned on and off by a preset schedule, unless health rules run the pump all day.',
    mend: 'Fit a time switch or set the automation’s schedule.',
  },
  'water.solar-pipe': {
    title: 'Room for solar later',
    asks: 'Between filter and heater enough pipe is left free to join collectors later, or connections for them are built in.',
    mend: 'Leave the length of pipe free before the heater is connected.',
  },
  'water.feeder-order': {
    title: 'Chemical feeder behind heater and check valve',
    asks: 'Chemicals join the loop last, behind heater and check valve, so that strong chlorine never meets the exchanger.',
    mend: 'Move the feeder behind the check valve, as the last thing before the pool.',
  },
  'water.bypass-line': {
    title: 'Bypass line of a heater without one inside',
    asks: 'A heater that has no bypass built in has a line with a valve between its inlet and outlet.',
    mend: 'Fit a bypass line and valve.',
  },
  'water.boiler-inspection': {
    title: 'Inspection by the boiler inspectorate',
    asks: 'Above the limits of the state’s law the heater is a boiler: its installation is told to the inspectorate, which inspects it.',
    mend: 'Ask the state’s boiler office before the heater is ordered.',
  },
  'water.relief-stamp': {
    title: 'Relief valve made for boilers',
    asks: 'The relief valve of a heater that counts as a boiler bears the mark for hot-water boilers.',
    mend: 'Fit a valve with that mark, of the same set pressure and at least the capacity.',
  },
  'water.flow-proving': {
    title: 'Large heater proves its flow',
    asks: 'From the input named on, a heater of tubes or coils fires only while a switch senses flow; pressure alone is none.',
    mend: 'Fit a flow switch in series with the pressure switch, as the maker allows.',
  },
  'place.listed': {
    title: 'Heater listed for pools and spas',
    asks: 'The heater bears the mark of a listing to the standard for gas pool heaters.',
    mend: 'Do not install it before the authority has accepted it.',
  },
  'place.controls-barred': {
    title: 'Controls out of guests’ reach',
    asks: 'At a pool open to others nobody but those in charge can reach the heater’s controls.',
    mend: 'Lock the controls or the room.',
  },
  'place.finned-tube-enclosure': {
    title: 'Finned-tube heater indoors in its own enclosure',
    asks: 'Under a roof a heater with finned tubes stands in a room or enclosure of its own, apart from people and chlorine.',
    mend: 'Ask the province’s gas authority what the enclosure must be before the heater is set there.',
  },
  'place.yearly-service': {
    title: 'Finned-tube heater indoors serviced yearly',
    asks: 'Under a roof a heater with finned tubes is serviced at least once a year, and the owner knows it.',
    mend: 'Agree a yearly visit and write it into the handover.',
  },
  'place.wall-mounted': {
    title: 'Heater on a wall held fast',
    asks: 'A heater that hangs on a wall is securely fastened to it.',
    mend: 'Fasten it by the maker’s brackets to what bears it.',
  },
};
