import fc from "fast-check";

/** One failure of a random test is enough here; the search for the smallest one would be most of the run. */
fc.configureGlobal({ endOnFailure: true });
