/**
 * A small web service that plans jobs: how a host runs the library for many users at once, with a
 * time limit and a way to stop. It uses the JDK's own server and listens to this machine alone.
 *
 * <p>First class to open: {@link io.github.seamstead.examples.service.PlanService}.
 */
@NullMarked
package io.github.seamstead.examples.service;

import org.jspecify.annotations.NullMarked;
