import fc from 'fast-check';

// The same random cases in every run: a failure can be repeated, and none comes and goes.
fc.configureGlobal({ seed: 20_240_611 });
