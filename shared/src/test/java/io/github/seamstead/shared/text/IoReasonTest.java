package io.github.seamstead.shared.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import org.junit.jupiter.api.Test;

class IoReasonTest {

  @Test
  void theReasonIsTold() {
    assertThat(IoReason.of(new IOException("No space left on device")))
        .isEqualTo("no space left on device");
    assertThat(IoReason.of(new FileSystemException("a/b", null, "File name too long")))
        .isEqualTo("file name too long: a/b");
    assertThat(IoReason.of(new AccessDeniedException("a/b"))).isEqualTo("no right to use a/b");
    assertThat(IoReason.of(new NoSuchFileException("a\nb"))).isEqualTo("there is no a\\u000Ab");
    assertThat(IoReason.of(new IOException())).isEqualTo("IOException");
  }
}
