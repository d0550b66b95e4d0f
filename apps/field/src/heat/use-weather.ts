/**
 * A weather file of the job: read by the worker, line by line, and refused with its reasons. Its months are written to
 * the job; its hours, too many for a log, are kept on this device and serve the year where the job still rests on them.
 */
import type { Issue } from '@firstfire/engine';
import { climateOfFile, type NamedWeather } from '@firstfire/job';
import { useEffect, useState } from 'react';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useShop } from '../store/shop-context.ts';
import { climateEdits, climateName, climateSource } from './climate-edits.ts';
import { type YearTold, yearWorker } from './year-asked.ts';

export interface WeatherFile {
  /** The last file that was opened here. */
  readonly weather: NamedWeather | undefined;
  /** The same, where the job rests on it. */
  readonly hours: NamedWeather | undefined;
  /** Why the last file was refused. */
  readonly refused: { readonly file: string; readonly issues: readonly Issue[] } | undefined;
  readonly reading: boolean;
  /** False where the device would not keep it: it lasts as long as the page. */
  readonly kept: boolean;
  readonly take: (file: File) => void;
  /** Has the job rest on the file that is here. */
  readonly rest: () => void;
}

export function useWeather(): WeatherFile {
  const session = useSession();
  const { doc } = session;
  const { view } = useMoment();
  const { storage } = useShop();
  const [weather, setWeather] = useState<NamedWeather>();
  const [refused, refuse] = useState<WeatherFile['refused']>();
  const [reading, setReading] = useState(false);
  const [isKept, setKept] = useState(true);
  const key = `weather/${doc}`;
  useEffect(() => {
    let gone = false;
    storage
      .retry((database) => database.get('device', key))
      .then((found) => {
        if (!gone && isWeather(found)) setWeather(found);
      })
      .catch(() => {});
    return () => {
      gone = true;
    };
  }, [storage, key]);
  const rest = ({ hours, name }: NamedWeather): void => {
    session.edit(climateEdits(session.now.get().view, climateOfFile({ weather: hours }, name)));
  };
  const put = (next: NamedWeather): void => {
    setWeather(next);
    refuse(undefined);
    rest(next);
    storage
      .retry((database) => database.put('device', next, key))
      .then(
        () => setKept(true),
        () => setKept(false),
      );
  };
  const take = async (file: File): Promise<void> => {
    setReading(true);
    try {
      const read = await readFile(await file.text());
      if (read.ok) put({ name: nameOf(read.value.city, file.name), hours: read.value.weather });
      else refuse({ file: file.name, issues: read.issues });
    } catch {
      refuse({ file: file.name, issues: [] });
    } finally {
      setReading(false);
    }
  };
  const isRestedOn =
    weather !== undefined && climateSource(view) === 'file' && climateName(view) === weather.name;
  return {
    weather,
    hours: isRestedOn ? weather : undefined,
    refused,
    reading,
    kept: isKept,
    take: (file) => void take(file),
    rest: () => weather !== undefined && rest(weather),
  };
}

/** Of where, and in which file. */
function nameOf(city: string, file: string): string {
  return city === '' ? file : `${city} (${file})`;
}

type Read = Extract<YearTold, { readonly tell: 'file' }>['read'];

function readFile(text: string): Promise<Read> {
  return new Promise((resolve, reject) => {
    const worker = yearWorker();
    worker.addEventListener('message', ({ data }: MessageEvent<YearTold>) => {
      if (data.tell === 'file') resolve(data.read);
      worker.terminate();
    });
    worker.addEventListener('error', () => {
      reject(new Error('the worker failed'));
      worker.terminate();
    });
    worker.postMessage({ ask: 'file', text });
  });
}

function isWeather(found: unknown): found is NamedWeather {
  if (typeof found !== 'object' || found === null) return false;
  const { name, hours } = found as Partial<NamedWeather>;
  return typeof name === 'string' && hours?.airTemperature instanceof Float64Array;
}
