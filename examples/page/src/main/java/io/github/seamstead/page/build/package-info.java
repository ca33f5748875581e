/** What runs while the page is built; nothing of it is in the page. */
package io.github.seamstead.page.build;
