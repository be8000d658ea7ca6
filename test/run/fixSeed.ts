import fc from 'fast-check';

// Every run tries the same cases, so that a failure is the change's own. SADDLEMARK_SEED tries others.
fc.configureGlobal({ seed: Number(process.env.SADDLEMARK_SEED ?? 20261125) });
