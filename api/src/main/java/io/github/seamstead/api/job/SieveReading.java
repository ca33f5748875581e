package io.github.seamstead.api.job;

/**
 * The mass held by one sieve.
 *
 * @param opening opening of the sieve, in metres
 * @param retained dry mass held by it, in kilograms
 */
public record SieveReading(double opening, double retained) {}
