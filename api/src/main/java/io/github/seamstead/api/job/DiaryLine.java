package io.github.seamstead.api.job;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;

/**
 * One line of a diary.
 *
 * @param date the day
 * @param time the time of day, if stated; noon is taken where one is needed
 * @param entry what happened
 */
public record DiaryLine(LocalDate date, Optional<LocalTime> time, DiaryEntry entry) {}
