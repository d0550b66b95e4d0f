import { evaluate, ok, properties } from '@firstfire/engine';
import { defineSum, number } from '../sum.ts';

/** Liquid water at atmospheric pressure, and its boiling line. */
export const waterProperties = defineSum({
  name: 'water-properties',
  inputs: { temperature: number('temperature', 'degF') },
  outputs: {
    density: { kind: 'density', unit: 'lb/ft3' },
    'specific-heat': { kind: 'specific-heat', unit: 'Btu/(lb degF)' },
    'vapour-pressure': { kind: 'absolute-pressure', unit: 'psia' },
    'latent-heat': { kind: 'latent-heat', unit: 'Btu/lb' },
    viscosity: { kind: 'dynamic-viscosity', unit: 'cP' },
  },
  source: properties.waterDensity.source,
  example: {
    given: { temperature: '25 degC' },
    gives: {
      density: '997.048 kg/m3',
      'specific-heat': '4.1819 kJ/(kg K)',
      'vapour-pressure': '3169.7 Pa',
      'latent-heat': '2441.71 kJ/kg',
      viscosity: '0.00089002 Pa s',
    },
    within: 2e-4,
    source: {
      document: 'IAPWS-IF97',
      at: 'liquid at 101.325 kPa and saturation line, 25 °C',
      known: 'read in a public copy',
    },
  },
  run: ({ temperature }) => {
    const at = { temperature };
    const density = evaluate(properties.waterDensity, at);
    const specificHeat = evaluate(properties.waterSpecificHeat, at);
    const vapourPressure = evaluate(properties.waterVapourPressure, at);
    const latentHeat = evaluate(properties.waterLatentHeat, at);
    const viscosity = evaluate(properties.waterDynamicViscosity, at);
    if (!density.ok) return density;
    if (!specificHeat.ok) return specificHeat;
    if (!vapourPressure.ok) return vapourPressure;
    if (!latentHeat.ok) return latentHeat;
    if (!viscosity.ok) return viscosity;
    return ok({
      density: density.value,
      'specific-heat': specificHeat.value,
      'vapour-pressure': vapourPressure.value,
      'latent-heat': latentHeat.value,
      viscosity: viscosity.value,
    });
  },
});
