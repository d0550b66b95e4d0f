/** Where the device is, if its owner allows it: an offer on the readings that follow from it, never taken by itself. */
import { catalog } from '@firstfire/reference';

export interface Here {
  readonly latitude: number;
  readonly longitude: number;
  /** m. */
  readonly altitude?: { readonly value: number; readonly plusMinus: number };
}

/** Readings that a position answers. */
export function isPlaced(collection: string, field: string): boolean {
  return collection === 'site' && (field === 'altitude' || field === 'climatePlace');
}

export function askDevice(): Promise<Here> {
  return new Promise((resolve, reject) => {
    if (!('geolocation' in navigator)) {
      reject(new Error('no geolocation'));
      return;
    }
    navigator.geolocation.getCurrentPosition(
      ({ coords }) => resolve(hereOf(coords)),
      (error) => reject(error),
      { enableHighAccuracy: true, timeout: 20_000, maximumAge: 60_000 },
    );
  });
}

type Coordinates = Pick<GeolocationCoordinates, 'latitude' | 'longitude' | 'altitude' | 'altitudeAccuracy'>;

/** W3C Geolocation: altitude above the WGS 84 ellipsoid, accuracy as the half-width that holds with 95 % confidence. */
export function hereOf({ latitude, longitude, altitude, altitudeAccuracy }: Coordinates): Here {
  const known = altitude !== null && Number.isFinite(altitude);
  return {
    latitude,
    longitude,
    ...(known ? { altitude: { value: altitude, plusMinus: (altitudeAccuracy ?? 0) + GEOID } } : {}),
  };
}

/** The ellipsoid lies up to about this far from sea level over North America: geoid heights of EGM96, from memory, m. */
const GEOID = 50;

const EARTH_RADIUS = 6_371_000;

export interface Near {
  readonly id: string;
  readonly name: string;
  /** m. */
  readonly distance: number;
}

/** The places whose climate is on board, the nearest first. */
export function nearestPlaces({ latitude, longitude }: Here): readonly Near[] {
  return catalog.climate.PLACES.map((place) => ({
    id: place.id,
    name: place.name,
    distance: arc([latitude, longitude], [place.latitude, place.longitude]),
  })).sort((a, b) => a.distance - b.distance);
}

type Degrees = readonly [latitude: number, longitude: number];

/** Haversine. */
function arc([lat1, lon1]: Degrees, [lat2, lon2]: Degrees): number {
  const rad = (degrees: number): number => (degrees * Math.PI) / 180;
  const half =
    Math.sin(rad(lat2 - lat1) / 2) ** 2 +
    Math.cos(rad(lat1)) * Math.cos(rad(lat2)) * Math.sin(rad(lon2 - lon1) / 2) ** 2;
  return 2 * EARTH_RADIUS * Math.asin(Math.min(1, Math.sqrt(half)));
}
