using Microsoft.Extensions.Logging.Console;

namespace EpisodePlanner.Web.Composition;

/// <summary>The log: lines for people, or JSON objects for programs.</summary>
internal static class Logs
{
    /// <summary>Everything of our own from information up; of the parts below only what is amiss.</summary>
    public static void AddLogs(this ILoggingBuilder logging, bool asJson)
    {
        logging.SetMinimumLevel(LogLevel.Information);
        logging.AddFilter("Microsoft", LogLevel.Warning);

        // Whoever starts the server says why it could not start.
        logging.AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.Critical);

        // Our own code says what goes wrong with the database, without the stack trace of every attempt.
        logging.AddFilter("Microsoft.EntityFrameworkCore", LogLevel.None);

        // Keys lie in a folder that only its owner can read; that they are not encrypted beside is known.
        logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        if (asJson)
        {
            logging.AddJsonConsole(console => Form(console, "yyyy-MM-ddTHH:mm:ss.fffZ"));
        }
        else
        {
            logging.AddSimpleConsole(console =>
            {
                console.SingleLine = true;
                Form(console, "HH:mm:ss ");
            });
        }
    }

    private static void Form(ConsoleFormatterOptions console, string time)
    {
        console.TimestampFormat = time;
        console.UseUtcTimestamp = true;
    }
}
