import fc from 'fast-check'

/** Properties try the same values in every run, so that a failure can be looked at again; the long fuzzing tries new ones. */
fc.configureGlobal({ seed: 20261125 })
