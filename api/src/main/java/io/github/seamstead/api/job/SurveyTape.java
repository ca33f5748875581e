package io.github.seamstead.api.job;

import java.util.Optional;

/**
 * The tape of a survey and how it was held, for the corrections of its readings.
 *
 * @param markedLength what the tape shows over the length that it was compared with, in metres
 * @param trueLength what that length is, in metres
 * @param expansion thermal expansion, per kelvin
 * @param referenceTemperature at which the comparison holds, in degrees Celsius
 * @param stiffness cross-section times modulus of elasticity, in newtons, if stated
 * @param referencePull at which the comparison holds, in newtons
 * @param massPerLength of the tape, in kilograms per metre, if stated
 * @param temperature of the tape on the day, in degrees Celsius, if stated
 * @param pull with which it was held, in newtons, if stated
 * @param hung whether it hung free between its ends
 */
public record SurveyTape(
    double markedLength,
    double trueLength,
    double expansion,
    double referenceTemperature,
    Optional<Double> stiffness,
    double referencePull,
    Optional<Double> massPerLength,
    Optional<Double> temperature,
    Optional<Double> pull,
    boolean hung) {}
