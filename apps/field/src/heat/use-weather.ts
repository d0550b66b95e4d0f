/** A weather file of the job, kept on this device: read by the worker, line by line, and refused with its reasons. */
import type { Issue } from '@firstfire/engine';
import type { NamedWeather } from '@firstfire/job';
import { useEffect, useState } from 'react';
import { useSession } from '../session/use-job.tsx';
import { useShop } from '../store/shop-context.ts';
import { type YearTold, yearWorker } from './year-asked.ts';

export interface WeatherFile {
  readonly weather: NamedWeather | undefined;
  /** Why the last file was refused. */
  readonly refused: { readonly file: string; readonly issues: readonly Issue[] } | undefined;
  readonly reading: boolean;
  /** False where the device would not keep it: it lasts as long as the page. */
  readonly kept: boolean;
  readonly take: (file: File) => void;
  readonly put: (weather: NamedWeather | undefined) => void;
}

export function useWeather(): WeatherFile {
  const { doc } = useSession();
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
  const put = (next: NamedWeather | undefined): void => {
    setWeather(next);
    refuse(undefined);
    const write =
      next === undefined
        ? storage.retry((database) => database.delete('device', key))
        : storage.retry((database) => database.put('device', next, key));
    write.then(
      () => setKept(true),
      () => setKept(false),
    );
  };
  const take = async (file: File): Promise<void> => {
    setReading(true);
    try {
      const read = await readFile(await file.text());
      if (read.ok) put({ name: read.value.city || file.name, hours: read.value.weather });
      else refuse({ file: file.name, issues: read.issues });
    } catch {
      refuse({ file: file.name, issues: [] });
    } finally {
      setReading(false);
    }
  };
  return { weather, refused, reading, kept: isKept, take: (file) => void take(file), put };
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
