import { useSyncExternalStore } from 'react';
import { benchOf } from '../../../store/bench/benchOf';
import type { Bench, BenchState } from '../../../store/bench/createBench';
import { useServices } from '../../services';

/** This maker's bench. */
export const useBench = (): Bench => benchOf(useServices().benchMemory);

/** What the bench holds, kept up to date. */
export const useBenchState = (bench: Bench): BenchState => useSyncExternalStore(bench.subscribe, bench.getState);
