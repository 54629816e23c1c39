/** The air a ball flies through: density and viscosity from weather and altitude. */

export interface Weather {
  readonly temperatureC: number;
  /** At the course, not reduced to sea level, hPa; absent: the standard atmosphere's at `altitudeM`. */
  readonly pressureHpa?: number;
  readonly altitudeM: number;
  /** Share of saturation, 0..1. */
  readonly humidity: number;
}

export const STANDARD_WEATHER: Weather = { temperatureC: 15, altitudeM: 0, humidity: 0 };

export interface Air {
  readonly densityKgM3: number;
  /** Kinematic viscosity, m²/s. */
  readonly viscosityM2S: number;
}

/** Gas constants of dry air and of water vapour, J/(kg K) (CIPM-2007 values, rounded). */
const DRY_AIR = 287.05;
const VAPOUR = 461.5;

/**
 * Density of moist air as a mixture of ideal gases, with the saturation pressure of Buck 1981 (J. Appl. Meteorol. 20:1527,
 * eq. for water, enhanced), and viscosity by Sutherland's law. Good to about 0.1 % from -20 to 45 °C.
 */
export function airOf(weather: Weather): Air {
  const kelvin = weather.temperatureC + 273.15;
  const pressurePa = 100 * (weather.pressureHpa ?? standardPressureHpa(weather.altitudeM));
  const vapourPa = weather.humidity * saturationPa(weather.temperatureC);
  const densityKgM3 = (pressurePa - vapourPa) / (DRY_AIR * kelvin) + vapourPa / (VAPOUR * kelvin);
  return { densityKgM3, viscosityM2S: dynamicViscosity(kelvin) / densityKgM3 };
}

/** Pressure of the standard atmosphere up to 11 km (ISO 2533:1975), hPa. */
export function standardPressureHpa(altitudeM: number): number {
  return 1013.25 * (1 - 2.25577e-5 * altitudeM) ** 5.25588;
}

function saturationPa(celsius: number): number {
  return 611.21 * Math.exp((18.678 - celsius / 234.5) * (celsius / (257.14 + celsius)));
}

/** Sutherland's law with the constants of the standard atmosphere (ISO 2533:1975), Pa s. */
function dynamicViscosity(kelvin: number): number {
  return (1.458e-6 * kelvin ** 1.5) / (kelvin + 110.4);
}
