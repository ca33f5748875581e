/**
 * The library behind the one-file page: messages in, answers out. Start at {@link
 * io.github.seamstead.page.Answers}; {@link io.github.seamstead.page.Engine} ties it to the
 * browser.
 */
package io.github.seamstead.page;
